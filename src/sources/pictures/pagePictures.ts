/** The pages of a document as pictures, to be shown beside the reading. */
export type PagePictures = {
  /**
   * The address of a page's picture, 1-based; drawn when it is first asked for.
   *
   * @throws Error when the page can't be drawn.
   */
  readonly page: (number: number) => Promise<string>;
  /** Gives back what the pictures hold; their addresses lead nowhere afterwards. */
  readonly close: () => void;
};
