import { Uri, type Webview } from 'vscode';

/** The only folder from which the page may load anything. */
export function mediaFolder(extension: Uri): Uri {
  return Uri.joinPath(extension, 'client', 'media');
}

/**
 * The page of the set sheet without any content: what is shown comes later, by message. Nothing but the one script and the one style
 * sheet named here is ever loaded or run.
 */
export function sheetPage(webview: Webview, extension: Uri): string {
  const nonce = newNonce();
  const address = (file: string): string => webview.asWebviewUri(Uri.joinPath(mediaFolder(extension), file)).toString();
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Set sheet</title>
<link rel="stylesheet" nonce="${nonce}" href="${address('set-sheet.css')}">
</head>
<body>
<div class="spoken" role="status" aria-live="polite"></div>
<main></main>
<script nonce="${nonce}" src="${address('set-sheet.js')}"></script>
</body>
</html>`;
}

function newNonce(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
