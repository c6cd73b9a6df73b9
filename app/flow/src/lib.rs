//! What the screens do, without a browser.
