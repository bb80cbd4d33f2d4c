-- Starts the language server of the program `recipe` for recipes. Any Neovim from 0.7 on.
local M = {}

M.options = {
  cmd = { 'recipe', 'lsp' },
  inlayHints = { thickness = true, resin = true, clock = true, pressure = true, cure = true },
}

--- What vim.lsp needs to know.
function M.config()
  return {
    name = 'recipe',
    cmd = M.options.cmd,
    filetypes = { 'recipe' },
    root_markers = { 'settings.recipe', '.git' },
    init_options = { inlayHints = M.options.inlayHints },
    settings = { recipe = { inlayHints = M.options.inlayHints } },
  }
end

local function root_of(buffer)
  local folder = vim.fn.fnamemodify(vim.api.nvim_buf_get_name(buffer), ':p:h')
  for _, marker in ipairs({ 'settings.recipe', '.git' }) do
    local found = vim.fn.findfile(marker, folder .. ';')
    if found == '' then
      found = vim.fn.finddir(marker, folder .. ';')
    end
    if found ~= '' then
      return vim.fn.fnamemodify(found, ':p:h' .. (vim.fn.isdirectory(found) == 1 and ':h' or ''))
    end
  end
  return folder
end

local clients = {}

--- Starts the language server for a buffer, or gives it the one that runs for its folder already.
function M.attach(buffer)
  if vim.fn.executable(M.options.cmd[1]) == 0 then
    return nil
  end
  local config = M.config()
  config.root_dir = root_of(buffer)
  config.workspace_folders = { { uri = vim.uri_from_fname(config.root_dir), name = config.root_dir } }
  if vim.lsp.start then
    return vim.lsp.start(config, { bufnr = buffer })
  end
  local id = clients[config.root_dir]
  if id == nil or vim.lsp.get_client_by_id(id) == nil then
    id = vim.lsp.start_client(config)
    clients[config.root_dir] = id
  end
  if id then
    vim.lsp.buf_attach_client(buffer, id)
  end
  return id
end

--- Call it once: options may give `cmd` and `inlayHints`.
function M.setup(options)
  M.options = vim.tbl_deep_extend('force', M.options, options or {})
  vim.api.nvim_create_autocmd('FileType', {
    group = vim.api.nvim_create_augroup('recipe', { clear = true }),
    pattern = 'recipe',
    callback = function(event)
      M.attach(event.buf)
    end,
  })
end

return M
