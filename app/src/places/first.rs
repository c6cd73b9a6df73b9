//! The screens before there is a yard, and when the disk does not open.

use super::Trouble;
use crate::device::address;
use crate::parts::{Action, ActionRow, Frame, FrameKind, Sentence, shell};
use crate::world::{World, reading};
use leptos::prelude::*;
use tussock_core::log::Kind;
use tussock_flow::routes::Route;
use tussock_flow::words::{English, HorsesWords};

/// The first address: the round when there are animals, else the painted shell, which is the offer to start.
#[component]
pub fn Home() -> impl IntoView {
    let world = World::here();
    let holds = reading(move || world.holds(Kind::Animal.word()));
    move || {
        holds.get().map(|holds| match holds {
            Ok(true) => {
                world.go(&Route::Round);
                ().into_any()
            }
            Ok(false) => {
                shell::show_first_run();
                ().into_any()
            }
            Err(error) => view! { <NoDisk error /> }.into_any(),
        })
    }
}

/// The disk does not open: says why, deletes nothing, and offers to try again or to save a copy as text.
#[component]
pub fn NoDisk(
    /// Why.
    error: Trouble,
) -> impl IntoView {
    shell::show_app();
    let words = English::default();
    let why = error.to_string();
    let again = Callback::new(|()| address::reload());
    let foot = move || {
        view! {
            <p class="quiet-row"><a class="quiet" href="reset.html">{words.save_a_copy()}</a></p>
            <ActionRow><Action says=words.try_again() press=again /></ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what="Tussock" foot=foot>
            <Sentence said=words.cannot_read() />
            <p>{words.cannot_read_why()}</p>
            <p class="soft small">{why}</p>
        </Frame>
    }
}
