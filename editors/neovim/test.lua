-- Types into a pattern as a person would, in a Neovim of its own, and holds what its
-- screen shows against what it should. Ends with code 1 at the first thing that is
-- not seen.
local child = vim.fn.jobstart({
  'nvim', '--embed', '--headless', '--clean',
  '--cmd', 'set columns=180 lines=80 runtimepath+=' .. vim.env.RUNTIME, vim.env.PATTERN,
}, { rpc = true })

-- within runs Lua in the Neovim that is tested.
local function within(code, ...)
  return vim.rpcrequest(child, 'nvim_exec_lua', code, { ... })
end

local function screen()
  return within([[
    vim.cmd('redraw!')
    local lines = {}
    for row = 1, vim.o.lines do
      local cells = {}
      for column = 1, vim.o.columns do
        cells[column] = vim.fn.screenstring(row, column)
      end
      lines[row] = table.concat(cells)
    end
    return table.concat(lines, '\n')
  ]])
end

local function must(what, happens)
  local ok, seen = true, nil
  if not vim.wait(10000, function()
    ok, seen = pcall(happens)
    return ok and seen
  end, 50) then
    io.stdout:write('NOT SEEN: ' .. what .. (ok and '' or ' (' .. tostring(seen) .. ')') .. '\n' .. screen() .. '\n')
    vim.cmd('cquit 1')
  end
  io.stdout:write('seen: ' .. what .. '\n')
end

local function sees(what, text)
  must(what .. ': ' .. text, function() return screen():find(text, 1, true) end)
end

local function type(keys)
  vim.rpcrequest(child, 'nvim_input', keys)
end

local function colour(line, words)
  return within([[
    local line, words = ...
    local column = vim.fn.getline(line):find(words, 1, true)
    return vim.fn.synIDattr(vim.fn.synID(line, column, 1), 'name')
  ]], line, words)
end

sees('the finding at its line', 'makes 15 sts, says 16')
sees('the count at the end of its line', '= 15 sts')
sees('the totals at a heading', 'Piece: Stalk total 7 sts')
must('colours', function()
  return colour(35, 'Rnd 5') == 'crochetPreProc' and colour(35, 'Sc in') == 'crochetFunction' and colour(35, '3 sts') == 'crochetNumber'
    and colour(35, '(16 sts)') == 'crochetSpecial' and colour(43, 'Fasten off') == 'crochetStatement'
end)

local function told(what, words)
  must(what, function()
    return within([[
      for _, window in ipairs(vim.api.nvim_list_wins()) do
        if vim.api.nvim_win_get_config(window).relative ~= '' then
          return table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), '\n')
        end
      end
      return ''
    ]]):find(words, 1, true)
  end)
end

type('35G0f2K')
told('what a clause makes, on K', 'Makes: 15 sts')
type('gg/^Gauge<CR>2wK')
told('what a gauge makes of a stitch', 'One stitch: 3.8 mm (0.15 in) wide')
type('35G0/Sc in<CR>lll:lua vim.lsp.buf.signature_help()<CR>')
told('where a stitch goes and what it is', '2 Sc in next st')

type('35G:s/16 sts/15 sts<CR>')
must('no finding once the count is right', function()
  return not screen():find('says 16', 1, true) and within('return #vim.diagnostic.get(0)') == 0
end)
type('59GA<BS><BS>9.<Esc>')
sees('the new count after an edit', '= 8 sts')
sees('what the edit makes wrong', 'makes 8 sts, says 7')
vim.cmd('qa!')
