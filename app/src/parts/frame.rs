//! The frame of a screen: head, main, foot, place bar.

use leptos::prelude::*;

/// Whether a screen is a place or a step of a flow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FrameKind {
    /// A place: the place bar is there.
    Place,
    /// A flow: a back key stands beside the action and the place bar is gone.
    Flow,
}

/// How wide the main column grows at a desk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum FrameWidth {
    /// One column of at most 640 px.
    #[default]
    Column,
    /// The whole window, for a list beside its detail (class `columns`).
    Desk,
}

/// What stands over every screen, given once as a context: the banner of the invented yard, or that nothing is kept.
#[derive(Clone)]
pub struct FrameBanner(
    /// The banner; nothing where there is none.
    pub ViewFn,
);

/// A screen. `foot` holds, top to bottom, quiet links, the undo line and the action row; `places` the place bar.
#[component]
pub fn Frame(
    /// A place or a flow.
    kind: FrameKind,
    /// How wide it grows.
    #[prop(optional)]
    width: FrameWidth,
    /// The head at the left: what this is.
    #[prop(into)]
    what: Signal<String>,
    /// The head at the right: when, or whose.
    #[prop(optional, into)]
    when: MaybeProp<String>,
    /// What stays at the foot.
    #[prop(optional, into)]
    foot: ViewFn,
    /// The place bar.
    #[prop(optional, into)]
    places: ViewFn,
    /// What the screen shows, the sentence first.
    children: Children,
) -> impl IntoView {
    let kind = match kind {
        FrameKind::Place => "place",
        FrameKind::Flow => "flow",
    };
    let width = match width {
        FrameWidth::Column => "column",
        FrameWidth::Desk => "desk",
    };
    view! {
        <div class="frame" data-frame=kind data-width=width>
            <header class="head">
                {use_context::<FrameBanner>().map(|FrameBanner(banner)| banner.run())}
                <div class="head-line">
                    <p class="head-what">{what}</p>
                    {move || when.get().map(|text| view! { <p class="head-when">{text}</p> })}
                </div>
            </header>
            <main class="main">
                <div class="content">{children()}</div>
                <div class="foot">{foot.run()}</div>
            </main>
            {places.run()}
        </div>
    }
}
