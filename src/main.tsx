/** The front door: opens the house and mounts the screens. Holds no logic. */

import { openFront } from './front/index.ts';
import { keepOffline } from './offline/page/index.ts';
import { mountScreens } from './screens/index.ts';

const page = document.getElementById('page');
if (page) {
  openFront()
    .then(({ world, anyRunOpen }) => {
      mountScreens(world, page);
      keepOffline((news) => {
        document.documentElement.dataset.offline = news.kind;
      }, anyRunOpen);
    })
    .catch((error: unknown) => {
      page.textContent = `Followrest cannot open: ${error instanceof Error ? error.message : String(error)}`;
    });
}
