" Another kind of file is known by the same ending, so this one insists.
autocmd BufNewFile,BufRead *.recipe set filetype=recipe
