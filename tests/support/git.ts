import { spawnSync } from 'node:child_process';

/** git in a folder of the test's own, with nobody's settings. */
export function git(folder: string, ...words: readonly string[]): string {
  const env = { PATH: process.env.PATH, HOME: folder, GIT_CONFIG_NOSYSTEM: '1' };
  const names = ['-c', 'user.name=test', '-c', 'user.email=test@example.invalid', '-c', 'commit.gpgsign=false'];
  const ran = spawnSync('git', [...names, ...words], { cwd: folder, env, encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`git ${words.join(' ')}: ${ran.stderr}`);
  return ran.stdout.trim();
}
