/** The front door: opens the house and mounts the screens. Holds no logic. */

import { cannotOpen, openFront } from './front/index.ts';
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
    .catch(async (error: unknown) => {
      page.textContent = await cannotOpen(error);
    });
}
