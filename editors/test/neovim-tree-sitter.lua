-- nvim --headless -u NONE -S editors/test/neovim-tree-sitter.lua      (from the top of the repository)
-- RECIPE_TEST_PARSER is a folder with parser/recipe.so and queries/recipe. What is wrong is written to RECIPE_TEST_RESULT.
local wrong = {}
local function run()
  vim.opt.runtimepath:prepend(vim.env.RECIPE_TEST_PARSER)
  vim.opt.runtimepath:prepend('editors/vim')
  vim.cmd('filetype plugin on | edit samples/hatch-lid.recipe')
  local root = vim.treesitter.get_parser(0, 'recipe'):parse()[1]:root()
  if root:has_error() then
    table.insert(wrong, 'the sample has an error')
  end
  local get = vim.treesitter.query and vim.treesitter.query.get or vim.treesitter.get_query
  local function captures(name)
    local found = {}
    local query = get('recipe', name)
    for id, node in query:iter_captures(root, 0, 0, -1) do
      local row, column = node:range()
      -- The later pattern counts.
      found[(row + 1) .. ':' .. (column + 1)] = query.captures[id]
    end
    return found
  end
  local highlights = captures('highlights')
  local function expect(line, piece, capture)
    for number, text in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
      local start = text:find(line, 1, true)
      if start then
        local at = text:find(piece, start, true)
        local got = highlights[number .. ':' .. at]
        if got ~= capture then
          table.insert(wrong, line .. ': ' .. piece .. ' is ' .. tostring(got) .. ', not ' .. capture)
        end
        return
      end
    end
    table.insert(wrong, 'no line ' .. line)
  end
  expect('language 1', 'language', 'keyword')
  expect('# A round', '#', 'comment')
  expect('use "shop', '"shop', 'string')
  expect('let lap', 'lap', 'constant')
  expect('mould hatch-lid-mould', 'mould', 'keyword')
  expect('mould hatch-lid-mould', 'hatch-lid-mould', 'type')
  -- A word that may open a block (surface revolved { ... }) is coloured as one that does.
  expect('surface     spherical-cap', 'surface', 'keyword')
  expect('surface     spherical-cap', 'spherical-cap', 'constant.builtin')
  expect('surface     spherical-cap', 'diameter', 'keyword.operator')
  expect('surface     spherical-cap', '300', 'number')
  expect('surface     spherical-cap', 'mm', 'type.builtin')
  expect('plies {', 'plies', 'keyword')
  for _, name in ipairs({ 'folds', 'indents', 'locals' }) do
    if next(captures(name)) == nil then
      table.insert(wrong, name .. ' find nothing')
    end
  end
end
local ok, trouble = xpcall(run, debug.traceback)
if not ok then
  table.insert(wrong, trouble)
end
vim.fn.writefile(wrong, vim.env.RECIPE_TEST_RESULT)
vim.cmd('qall!')
