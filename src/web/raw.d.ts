/** Text files taken in as they are at build time. */
declare module "*.yaml?raw" {
  const text: string;
  export default text;
}
