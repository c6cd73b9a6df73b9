//! The season.
use leptos::prelude::*;

/// The year of grass.
#[component]
pub fn Season() -> impl IntoView {}
