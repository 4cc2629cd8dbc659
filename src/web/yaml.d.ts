/** YAML files, read into plain JSON at build time so that the page needs no reader for them. */
declare module "*.yaml" {
  const document: unknown;
  export default document;
}
