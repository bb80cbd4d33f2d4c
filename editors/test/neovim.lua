-- nvim --headless -u NONE -S editors/test/neovim.lua      (from the top of the repository)
-- RECIPE_TEST_SERVER is the command of the language server, blanks between its words. What is wrong is written to RECIPE_TEST_RESULT;
-- an empty file says that all is well.
local wrong = {}
local function expect(what, is_right, got)
  if not is_right then
    table.insert(wrong, what .. ': ' .. vim.inspect(got))
  end
end

local function run()
  vim.opt.runtimepath:prepend('editors/vim')
  vim.opt.runtimepath:prepend('editors/neovim')
  vim.cmd('filetype plugin indent on | syntax on')
  vim.opt.swapfile = false
  local folder = vim.fn.tempname()
  vim.fn.mkdir(folder, 'p')
  for _, name in ipairs({ 'shop.recipe', 'hatch-lid.recipe' }) do
    vim.fn.writefile(vim.fn.readfile('samples/' .. name, 'b'), folder .. '/' .. name, 'b')
  end

  require('recipe').setup({ cmd = vim.split(vim.env.RECIPE_TEST_SERVER, ' ') })
  vim.cmd('edit ' .. folder .. '/hatch-lid.recipe')
  local buffer = vim.api.nvim_get_current_buf()
  local original = vim.api.nvim_buf_get_lines(buffer, 0, -1, false)
  expect('file type', vim.bo.filetype == 'recipe', vim.bo.filetype)

  local get_clients = vim.lsp.get_clients or vim.lsp.get_active_clients
  local function client()
    local one = get_clients()[1]
    return one and one.initialized ~= false and one or nil
  end
  expect('the language server starts', vim.wait(30000, function() return client() ~= nil end, 50), 'no client')
  if not client() then
    return
  end
  expect('its name', client().name == 'recipe', client().name)

  local function errors()
    return vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR })
  end
  local function line_of(piece)
    for number, line in ipairs(vim.api.nvim_buf_get_lines(buffer, 0, -1, false)) do
      local at = line:find(piece, 1, true)
      if at then
        return number - 1, at - 1
      end
    end
  end
  local function replace(old, new)
    local line, at = line_of(old)
    vim.api.nvim_buf_set_text(buffer, line, at, line, at + #old, { new })
    return line, at
  end

  -- Break, look, mend.
  local line, at = replace('bagged', 'baged')
  expect('a finding comes', vim.wait(30000, function() return #errors() > 0 end, 50), errors())
  local first = errors()[1] or {}
  expect('where the finding stands', first.lnum == line and first.col == at and first.end_col == at + 5, first)
  replace('baged', 'bagged')
  expect('the finding goes', vim.wait(30000, function() return #errors() == 0 end, 50), errors())

  -- Hover.
  local hover_line, hover_at = line_of('slow-laminating-epoxy')
  vim.api.nvim_win_set_cursor(0, { hover_line + 1, hover_at })
  local make = vim.lsp.util.make_position_params
  local answers = vim.lsp.buf_request_sync(buffer, 'textDocument/hover', make(0, 'utf-16'), 30000)
  local _, answer = next(answers or {})
  expect('hover', answer and answer.result and vim.inspect(answer.result.contents):lower():find('epoxy'), answers)

  -- Layout.
  replace('let lap = 15 mm', 'let   lap=15mm')
  if vim.lsp.buf.format then
    vim.lsp.buf.format({ bufnr = buffer, timeout_ms = 30000 })
  else
    vim.lsp.buf.formatting_sync(nil, 30000)
  end
  local laid_out = vim.api.nvim_buf_get_lines(buffer, 0, -1, false)
  expect('layout', vim.deep_equal(laid_out, original), #laid_out)

  -- Rename.
  local rename_line, rename_at = line_of('hatch-lid-mould')
  vim.api.nvim_win_set_cursor(0, { rename_line + 1, rename_at })
  local params = make(0, 'utf-16')
  params.newName = 'lid-shell'
  local _, renamed = next(vim.lsp.buf_request_sync(buffer, 'textDocument/rename', params, 30000) or {})
  expect('rename', renamed and renamed.result, renamed)
  if renamed and renamed.result then
    vim.lsp.util.apply_workspace_edit(renamed.result, 'utf-16')
    local text = table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), '\n')
    expect('every use is renamed', text == table.concat(original, '\n'):gsub('hatch%-lid%-mould', 'lid-shell'), text)
  end

  local id = client().id
  vim.lsp.stop_client(id)
  expect('the language server ends', vim.wait(10000, function() return vim.lsp.get_client_by_id(id) == nil end, 50), id)
end

local ok, trouble = xpcall(run, debug.traceback)
if not ok then
  table.insert(wrong, trouble)
end
vim.fn.writefile(vim.split(table.concat(wrong, '\n'), '\n', { trimempty = true }), vim.env.RECIPE_TEST_RESULT)
vim.cmd('qall!')
