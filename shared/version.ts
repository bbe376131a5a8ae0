/** The version of the project; a test holds it equal to package.json and the manifest. */
export const version = '0.1.0'
