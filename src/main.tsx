import { render } from 'preact';
import { keepOffline } from './offline/page/index.ts';

const page = document.getElementById('page');
if (page !== null) render(<h1>Followrest</h1>, page);

keepOffline(
  (news) => {
    document.documentElement.dataset.offline = news.kind;
  },
  async () => false,
);
