/** Ground on which the examples of the rules about paths stand: a valley, a hill beside it, a hollow behind two ridges. */
export const exampleGround = `
terrain: { files: [hickory-gap.tif] }
places:
  base: { name: Base, at: "36.6192, -84.2010", kind: base }
  hill: { name: Hill, at: "36.6258, -84.2725", kind: high-ground }
  hollow: { name: Hollow, at: "36.5817, -84.3600", kind: field }
  ridge: { name: Ridge, at: "36.6542, -84.3367", kind: high-ground }`;
