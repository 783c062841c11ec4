// Floor 1. What we use of `xkcd-colors`, which brings no types: the colours of a survey, each with its commonest name.
declare module "xkcd-colors" {
  const survey: { readonly colors: readonly { readonly name: string; readonly hex: string }[] };
  export default survey;
}
