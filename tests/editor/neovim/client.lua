-- Neovim's own language client, attached to one server over stdio and asked from outside through Driver.call: a function's
-- name, the file with its argument and the file for its answer, both JSON. Works on Neovim 0.7 (no vim.lsp.start, no pull
-- diagnostics, so the server pushes) and later. Knows the protocol only, nothing of what the server checks.

Driver = { published = {}, messages = {} }

local client_id

local function client()
  return vim.lsp.get_client_by_id(client_id)
end

-- Keeps what the server published beside what Neovim shows, by URI, as the server sent it.
local function remember_published(err, result, context, config)
  Driver.published[result.uri] = result.diagnostics
  return vim.lsp.diagnostic.on_publish_diagnostics(err, result, context, config)
end

local function remember_message(_, result)
  table.insert(Driver.messages, { type = result.type, message = result.message })
end

local function attach()
  if client_id then
    vim.lsp.buf_attach_client(0, client_id)
  end
end

-- { command = {...}, root = path, languageId = name }
function Driver.start(options)
  vim.fn.chdir(options.root)
  client_id = vim.lsp.start_client({
    name = 'server',
    cmd = options.command,
    root_dir = options.root,
    workspace_folders = { { uri = vim.uri_from_fname(options.root), name = options.root } },
    get_language_id = function()
      return options.languageId
    end,
    capabilities = vim.lsp.protocol.make_client_capabilities(),
    handlers = {
      ['textDocument/publishDiagnostics'] = remember_published,
      ['window/showMessage'] = remember_message,
    },
    on_exit = function(code, signal)
      Driver.exited = { code = code, signal = signal }
    end,
  })
  return client_id ~= nil
end

-- Ready, once the server has answered the first request of all; and whether it has ended since.
function Driver.state()
  local running = client()
  return {
    ready = running ~= nil and running.initialized == true,
    exited = Driver.exited or vim.NIL,
    capabilities = running and running.server_capabilities or vim.NIL,
  }
end

function Driver.open(file)
  vim.cmd('silent edit ' .. vim.fn.fnameescape(file))
  attach()
  return vim.uri_from_bufnr(0)
end

-- { line, character, endLine, endCharacter, newText }: zero-based, in UTF-16 units, as the protocol counts.
function Driver.change(edit)
  vim.lsp.util.apply_text_edits({
    {
      range = {
        start = { line = edit.line, character = edit.character },
        ['end'] = { line = edit.endLine, character = edit.endCharacter },
      },
      newText = edit.newText,
    },
  }, 0, 'utf-16')
  return true
end

function Driver.save()
  vim.cmd('silent write')
  return true
end

function Driver.undo()
  vim.cmd('silent undo')
  return true
end

function Driver.lines()
  return vim.api.nvim_buf_get_lines(0, 0, -1, false)
end

-- What Neovim shows, in every buffer, files that were never opened among them.
function Driver.shown()
  local list = {}
  for _, diagnostic in ipairs(vim.diagnostic.get(nil)) do
    table.insert(list, {
      uri = vim.uri_from_bufnr(diagnostic.bufnr),
      line = diagnostic.lnum,
      column = diagnostic.col,
      severity = diagnostic.severity,
      message = diagnostic.message,
    })
  end
  return list
end

function Driver.sent()
  local list = {}
  for uri, diagnostics in pairs(Driver.published) do
    table.insert(list, { uri = uri, diagnostics = diagnostics })
  end
  return list
end

function Driver.said()
  return Driver.messages
end

-- { method, params, within }: any request of the protocol, for the open buffer; the text document is filled in.
function Driver.request(ask)
  local params = ask.params
  if params.textDocument == nil then
    params.textDocument = { uri = vim.uri_from_bufnr(0) }
  end
  local response, problem = client().request_sync(ask.method, params, ask.within, 0)
  if response == nil then
    return { error = { message = problem or 'no answer' } }
  end
  return { result = response.result, error = response.err }
end

-- Applies what a rename or a code action gave, as Neovim does for a person.
function Driver.apply(edit)
  vim.lsp.util.apply_workspace_edit(edit, 'utf-16')
  return true
end

-- Every loaded buffer's text by URI, so that a change over several files can be compared.
function Driver.buffers()
  local list = {}
  for _, buffer in ipairs(vim.api.nvim_list_bufs()) do
    if vim.api.nvim_buf_is_loaded(buffer) and vim.api.nvim_buf_get_name(buffer) ~= '' then
      table.insert(list, {
        uri = vim.uri_from_bufnr(buffer),
        text = table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), '\n'),
      })
    end
  end
  return list
end

function Driver.call(name, question, answer)
  local text = table.concat(vim.fn.readfile(question), '\n')
  local value = Driver[name](vim.fn.json_decode(text))
  vim.fn.writefile({ vim.fn.json_encode(value == nil and vim.NIL or value) }, answer)
  return 'answered'
end
