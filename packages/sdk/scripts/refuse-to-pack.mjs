// The workspace's own folder is not the package: packed as it is, its offline mode would ask for neighbours that nobody can install.
console.error(
  "This folder is not what is published. `npm run pack:tarball` here makes the package; a running service gives it, too.",
);
process.exit(1);
