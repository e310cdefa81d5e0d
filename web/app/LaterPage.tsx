import { Component, Suspense, type ReactNode } from 'react';
import { Button } from '../ui/Button.tsx';
import { t } from '../words/t.ts';
import css from './App.module.css';

interface LaterPageProps {
  readonly children: ReactNode;
}

/** A page that comes when it is opened: says so while it comes, and when it cannot be had. */
export class LaterPage extends Component<LaterPageProps, { readonly failed: boolean }> {
  override state = { failed: false };
  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }
  override render(): ReactNode {
    if (this.state.failed) {
      return (
        <main className={css.coming} role="alert">
          <p>{t('page.pages.notFetched')}</p>
          {/* a page that once failed to come stays failed until all is loaded anew; nothing made is lost by it */}
          <Button kind="plain" onClick={() => location.reload()}>
            {t('page.pages.fetchAgain')}
          </Button>
        </main>
      );
    }
    return <Suspense fallback={<Coming />}>{this.props.children}</Suspense>;
  }
}

function Coming() {
  return (
    <p className={css.coming} role="status">
      {t('page.pages.loading')}
    </p>
  );
}
