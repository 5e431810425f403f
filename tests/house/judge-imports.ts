/** Judges imports by the table of rooms and says, in one sentence each, where a thing belongs. */

import { builtinModules } from 'node:module';
import { posix } from 'node:path';
import { COMPUTED, type Import, importsOf } from './imports.ts';
import { MAY_LEAVE_SRC, MORE_DOORS, ROOMS, type Room, SHARED } from './rooms.ts';

/** Source files by path from src/, such as "trade/rule.ts". */
export type Sources = Readonly<Record<string, string>>;

/** All that is wrong with the imports of these files. */
export function judgeImports(sources: Sources): readonly string[] {
  return Object.entries(sources).flatMap(([path, text]) => judgeFile(path, text));
}

function judgeFile(path: string, text: string): readonly string[] {
  const imports = importsOf(path, text);
  if (isFrontDoor(path)) return [];
  const room = roomOf(path);
  if (room === null) {
    return [`src/${path} is in no room. Rooms: ${ROOMS.map((each) => each.name).join(', ')}.`];
  }
  return imports.flatMap((one) => judge(path, room, one) ?? []);
}

/** main.tsx knows everybody; declaration files of Vite know nobody. */
function isFrontDoor(path: string): boolean {
  return path === 'main.tsx' || path === 'vite-env.d.ts';
}

/** The innermost room a file lies in. */
function roomOf(path: string): Room | null {
  return ROOMS.find((room) => path.startsWith(`${room.name}/`)) ?? null;
}

function judge(path: string, room: Room, one: Import): string | null {
  const says = (trouble: string) => `src/${path} ${trouble} ${room.otherwise}`;
  if (one.from === COMPUTED) {
    return room.name === 'cli'
      ? null
      : says('loads a file by a computed name; write the name out.');
  }
  if (one.from.startsWith('.')) return judgeOwn(path, room, one, says);
  if (isBuiltin(one.from)) return room.node ? null : says(`imports ${one.from} of Node.`);
  const npm = packageOf(one.from);
  const allowed = room.npm.includes(npm) || room.npm.includes('*');
  return allowed ? null : says(`imports the package ${npm}, which is not in this room's row.`);
}

type Says = (trouble: string) => string;

function judgeOwn(path: string, room: Room, one: Import, says: Says): string | null {
  const target = posix.join(posix.dirname(path), one.from);
  if (target.startsWith('../')) {
    const mayLeave = MAY_LEAVE_SRC.includes(room.name) || (room.node && one.reach === 'start');
    return mayLeave ? null : says(`reads ${one.from}, outside src/.`);
  }
  if (target === 'main.tsx') return says('imports main.tsx, which only imports.');
  const other = roomOf(target);
  if (other === null) return says(`imports src/${target}, which is in no room.`);
  if (other === room) return judgeInside(path, room, target);
  if (one.reach === 'start') {
    return room.starts.includes(other.name) ? null : says(`starts ${other.name}/.`);
  }
  return judgeAcross(room, other, target, one, says);
}

function judgeInside(path: string, room: Room, target: string): string | null {
  if (target !== `${room.name}/index.ts`) return null;
  return `src/${path} imports its own door. Inside ${room.name}/, import the file that has the name.`;
}

function judgeAcross(room: Room, other: Room, target: string, one: Import, says: Says) {
  const view = room.sees[other.name];
  if (view === undefined) return says(`looks into ${other.name}/.`);
  if (view !== 'door' && one.reach !== 'types') {
    return says(`imports values of ${other.name}/, of which it may only see types (import type).`);
  }
  const file = target.slice(other.name.length + 1);
  if (view === 'ports' && file !== 'ports.ts') {
    return says(`looks into ${other.name}/${file}; it may see ${other.name}/ports.ts.`);
  }
  const doors = ['index.ts', ...(MORE_DOORS[other.name] ?? [])];
  const isFamily = SHARED.includes(other.name) && familyOf(room) === familyOf(other);
  if (doors.includes(file) || isFamily) return null;
  return says(`enters ${other.name}/ by ${file}. Its doors: ${doors.join(', ')}.`);
}

function familyOf(room: Room): string {
  return room.name.split('/', 1)[0] ?? '';
}

function isBuiltin(name: string): boolean {
  return name.startsWith('node:') || builtinModules.includes(name);
}

function packageOf(name: string): string {
  return name.split('/', name.startsWith('@') ? 2 : 1).join('/');
}
