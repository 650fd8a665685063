import { Uri, type Webview } from 'vscode';

/** The only folder from which the page may load anything. */
export function mediaFolder(extension: Uri): Uri {
  return Uri.joinPath(extension, 'client', 'media');
}

export function sheetPage(webview: Webview, extension: Uri): string {
  return emptyPage(webview, extension, { title: 'Set sheet', script: 'set-sheet.js', styles: ['set-sheet.css'] });
}

export function reviewPage(webview: Webview, extension: Uri): string {
  const styles = ['set-sheet.css', 'review.css'];
  return emptyPage(webview, extension, { title: 'What changed', script: 'review.js', styles });
}

interface PageParts {
  readonly title: string;
  readonly script: string;
  readonly styles: readonly string[];
}

/**
 * A page without any content: what is shown comes later, by message. Nothing but the one script and the style sheets named here is ever
 * loaded or run.
 */
function emptyPage(webview: Webview, extension: Uri, { title, script, styles }: PageParts): string {
  const nonce = newNonce();
  const address = (file: string): string => webview.asWebviewUri(Uri.joinPath(mediaFolder(extension), file)).toString();
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'nonce-${nonce}'; style-src 'nonce-${nonce}'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
${styles.map((file) => `<link rel="stylesheet" nonce="${nonce}" href="${address(file)}">`).join('\n')}
</head>
<body>
<div class="spoken" role="status" aria-live="polite"></div>
<main></main>
<script nonce="${nonce}" src="${address(script)}"></script>
</body>
</html>`;
}

function newNonce(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
