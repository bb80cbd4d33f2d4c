if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

setlocal comments=:# commentstring=#\ %s
setlocal iskeyword+=-
setlocal expandtab shiftwidth=2 softtabstop=2
setlocal formatoptions-=t formatoptions+=croql
if executable('recipe')
  setlocal formatprg=recipe\ fmt\ -
endif

let b:undo_ftplugin = 'setlocal comments< commentstring< iskeyword< expandtab< shiftwidth< softtabstop< formatoptions< formatprg<'
