"""The grey values of what a page shows."""

import base64

import numpy as np
from numpy.typing import NDArray
from playwright.sync_api import Page

READ = """picture => new Promise(done => {
  const image = new Image();
  image.onload = () => {
    const canvas = document.createElement('canvas');
    canvas.width = image.width; canvas.height = image.height;
    const pen = canvas.getContext('2d');
    pen.drawImage(image, 0, 0);
    const seen = pen.getImageData(0, 0, image.width, image.height).data, grey = [];
    for (let i = 0; i < seen.length; i += 4) grey.push((seen[i] + seen[i + 1] + seen[i + 2]) / 3 | 0);
    done([image.height, image.width, grey]);
  };
  image.src = picture;
})"""


def pixels_of(page: Page) -> NDArray[np.uint8]:
    """One grey value a point, as a camera would see the page."""
    picture = "data:image/png;base64," + base64.b64encode(page.screenshot()).decode()
    other = page.context.new_page()
    height, width, grey = other.evaluate(READ, picture)
    other.close()
    return np.array(grey, dtype=np.uint8).reshape(height, width)
