/** What an error code of the system means to someone who wanted something written. */
export function whyUnwritable(code: string): string {
  switch (code) {
    case "ENOENT":
      return "there is no such folder";
    case "EACCES":
    case "EPERM":
    case "EROFS":
      return "you may not write here";
    case "ENOSPC":
    case "EDQUOT":
      return "the disk is full";
    case "EFBIG":
      return "the file is larger than this disk can hold";
    case "EBUSY":
    case "ETXTBSY":
      return "another program holds this file";
    case "EISDIR":
      return "this is a folder; name a file in it";
    case "ENOTDIR":
      return "a part of this path is a file, not a folder";
    case "ENAMETOOLONG":
      return "this name is too long";
    default:
      return `the system says ${code}`;
  }
}
