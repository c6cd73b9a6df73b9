//! The address the page stands at: the part after `#`.

use tussock_flow::routes::Route;

/// Where the page stands; an address that is not understood is the round.
pub fn here() -> Route {
    web_sys::window()
        .and_then(|window| window.location().hash().ok())
        .and_then(|hash| Route::parse(&hash))
        .unwrap_or(Route::Round)
}

/// Opens an address.
pub fn go(route: &Route) {
    if let Some(window) = web_sys::window() {
        // Setting a hash of plain letters does not fail.
        let _ = window.location().set_hash(&route.to_string());
    }
}

/// Loads the page anew.
pub fn reload() {
    if let Some(window) = web_sys::window() {
        // A page that cannot reload stays as it is.
        let _ = window.location().reload();
    }
}
