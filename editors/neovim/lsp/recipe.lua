-- For vim.lsp.enable('recipe') (Neovim 0.11 and later).
return require('recipe').config()
