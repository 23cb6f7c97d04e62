/** How to reach a registry: what a person behind a proxy or a mirror sets, and an installer needs. */
const network = /^npm_config_(registry|proxy|https_proxy|cafile|strict_ssl)$/;

/**
 * The environment without what npm adds for the scripts it runs (npm_config_*, npm_package_*, npm_lifecycle_* ...).
 * Another package manager would take npm's settings, such as its cache and prefix, for its own.
 * @param {NodeJS.ProcessEnv} env the environment that npm gave to a script
 * @returns {NodeJS.ProcessEnv} a copy; the settings of the network stay
 */
export function withoutNpmSettings(env) {
  return Object.fromEntries(
    Object.entries(env).filter(([name]) => !name.startsWith("npm_") || network.test(name)),
  );
}
