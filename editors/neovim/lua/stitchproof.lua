-- Starts the server for a crochet pattern. Neovim itself shows what the server
-- says; what came with later versions is made up for here, from 0.7 on: keys
-- that ask the server, and the running count.
local M = {}

local content_modified = -32801 -- the protocol's code for an answer that is out of date
local space = vim.api.nvim_create_namespace('stitchproof')

-- Draws the counts of a whole buffer at the ends of its lines.
local function draw(buffer, hints)
  local labels = {}
  for _, hint in ipairs(hints) do
    local line = hint.position.line
    labels[line] = labels[line] and labels[line] .. ' · ' .. hint.label or hint.label
  end
  vim.api.nvim_buf_clear_namespace(buffer, space, 0, -1)
  for line, label in pairs(labels) do
    if line < vim.api.nvim_buf_line_count(buffer) then
      vim.api.nvim_buf_set_extmark(buffer, space, line, 0, {
        virt_text = { { label, 'Comment' } },
        priority = 1, -- before what is wrong, which may run out of the window
      })
    end
  end
end

local waiting = {} -- the buffers whose counts are about to be asked for

-- Asks for the counts of a whole buffer when the writer pauses. Where the text has
-- changed before the answer came, or the server says so, it asks again.
local function count(client, buffer)
  if waiting[buffer] then
    return
  end
  waiting[buffer] = true
  vim.defer_fn(function()
    waiting[buffer] = nil
    if not vim.api.nvim_buf_is_loaded(buffer) then
      return
    end
    local asked = vim.api.nvim_buf_get_changedtick(buffer)
    client.request('textDocument/inlayHint', {
      textDocument = { uri = vim.uri_from_bufnr(buffer) },
      range = {
        start = { line = 0, character = 0 },
        ['end'] = { line = vim.api.nvim_buf_line_count(buffer), character = 0 },
      },
    }, function(err, hints)
      if not vim.api.nvim_buf_is_loaded(buffer) then
        return
      end
      if vim.api.nvim_buf_get_changedtick(buffer) ~= asked or (err and err.code == content_modified) then
        count(client, buffer)
      elseif not err then
        draw(buffer, hints or {})
      end
    end, buffer)
  end, 100)
end

-- Has keys ask the server where Neovim does not see to that by itself.
local function keys(buffer)
  if vim.fn.maparg('K', 'n') == '' then
    vim.api.nvim_buf_set_keymap(buffer, 'n', 'K', '<Cmd>lua vim.lsp.buf.hover()<CR>', { silent = true })
  end
  vim.bo[buffer].omnifunc = 'v:lua.vim.lsp.omnifunc' -- CTRL-X CTRL-O completes
  vim.bo[buffer].tagfunc = 'v:lua.vim.lsp.tagfunc' -- CTRL-] goes to where a name is given
end

local function attached(client, buffer)
  keys(buffer)
  if vim.lsp.inlay_hint then
    vim.lsp.inlay_hint.enable(true, { bufnr = buffer })
  end
  local function refresh()
    if not vim.lsp.inlay_hint then
      count(client, buffer)
    end
    vim.lsp.codelens.refresh()
  end
  vim.api.nvim_create_autocmd({ 'TextChanged', 'TextChangedI', 'InsertLeave' }, { buffer = buffer, callback = refresh })
  refresh()
end

-- start serves the current buffer, by a server that runs already where there is one.
-- vim.g.stitchproof holds the server's settings, as in
-- { hints = { running = false, branches = true, totals = true }, lenses = true }.
function M.start()
  local config = {
    name = 'stitchproof',
    cmd = { 'stitchproof', 'lsp' },
    root_dir = vim.fn.expand('%:p:h'),
    settings = { stitchproof = vim.g.stitchproof },
    init_options = vim.g.stitchproof,
    on_attach = attached,
  }
  if vim.lsp.start then
    vim.lsp.start(config)
    return
  end
  M.id = M.id and vim.lsp.get_client_by_id(M.id) and M.id or vim.lsp.start_client(config)
  if M.id then
    vim.lsp.buf_attach_client(0, M.id)
  end
end

return M
