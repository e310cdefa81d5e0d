import { Component, type ReactNode } from 'react';
import css from './Failed.module.css';
import { Failed } from './Failed.tsx';

interface BoundaryProps {
  /** Begins the part again; without it the whole page is loaded again, which saves before it goes. */
  readonly onAgain?: () => void;
  readonly onClose?: (() => void) | undefined;
  /** Fills the window: around all of the page. */
  readonly whole?: boolean;
  readonly children: ReactNode;
}

/** Keeps a part that breaks from taking the page with it. */
export class Boundary extends Component<BoundaryProps, { readonly failed: boolean }> {
  override state = { failed: false };
  static getDerivedStateFromError(): { readonly failed: boolean } {
    return { failed: true };
  }
  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    const { onAgain = () => location.reload(), onClose, whole } = this.props;
    const shown = <Failed how="failed" onAgain={onAgain} onClose={onClose} />;
    return whole ? <main className={css.whole}>{shown}</main> : shown;
  }
}
