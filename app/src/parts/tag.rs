//! A tag: what is really there, hung on its cord.

use leptos::prelude::*;

use super::press::once;
use super::{Press, State, StateShape};

/// The eyelet of a job, which ticks it.
#[derive(Debug, Clone, Copy)]
pub struct Tick {
    /// What a screen reader says for it, for example "Done: lift out tub 2".
    pub name: Signal<String>,
    /// Ticks the job. A second tap within 600 ms is not passed on.
    pub act: Callback<()>,
}

/// A tag. Without `tick` it is one link or button (or, without `press` either, a plain block); with `tick` the eyelet is
/// a button of its own and the rest opens.
#[component]
pub fn Tag(
    /// Its state: the shape in the eyelet and the edge.
    #[prop(into)]
    state: Signal<State>,
    /// The word of the state. Empty only where the lead says it already (later: the time).
    #[prop(into)]
    word: Signal<String>,
    /// The lead column, a time. Absent where the tag begins with a name.
    #[prop(optional, into)]
    lead: MaybeProp<String>,
    /// First line: the job, or the name.
    #[prop(into)]
    what: Signal<String>,
    /// Second line: whose and how much.
    #[prop(optional, into)]
    second: MaybeProp<String>,
    /// What opening it leads to.
    #[prop(optional, into)]
    press: Option<Press>,
    /// For a job: what ticking it does.
    #[prop(optional, into)]
    tick: Option<Tick>,
    /// A small picture after the words of a tag that is no job.
    #[prop(optional_no_strip)]
    picture: Option<ViewFn>,
) -> impl IntoView {
    let data_state = move || state.get().as_str();
    let data_lead = move || lead.with(Option::is_none).then_some("none");
    let inside = move || view! { <Words word lead what second /> };
    let data_picture = picture.is_some().then_some("");
    let picture =
        picture.map(|picture| view! { <span class="picture-square">{picture.run()}</span> });
    match (tick, press) {
        (Some(tick), press) => {
            let ticked = once(tick.act);
            let open = match press {
                Some(Press::Route(href)) => view! { <a class="open" href=href>{inside()}</a> }.into_any(),
                Some(Press::Act(act)) => {
                    view! { <button class="open" type="button" on:click=once(act)>{inside()}</button> }.into_any()
                }
                None => view! { <div class="open">{inside()}</div> }.into_any(),
            };
            view! {
                <div class="tag job" data-state=data_state data-lead=data_lead>
                    <button class="tick" type="button" aria-label=tick.name on:click=ticked>
                        <StateShape state />
                    </button>
                    {open}
                </div>
            }
            .into_any()
        }
        (None, Some(Press::Route(href))) => view! {
            <a class="tag" data-state=data_state data-lead=data_lead data-picture=data_picture href=href>
                <span class="eyelet"><StateShape state /></span>
                {inside()}
                {picture}
            </a>
        }
        .into_any(),
        (None, Some(Press::Act(act))) => view! {
            <button class="tag" type="button" data-state=data_state data-lead=data_lead data-picture=data_picture on:click=once(act)>
                <span class="eyelet"><StateShape state /></span>
                {inside()}
                {picture}
            </button>
        }
        .into_any(),
        (None, None) => view! {
            <div class="tag" data-state=data_state data-lead=data_lead data-picture=data_picture>
                <span class="eyelet"><StateShape state /></span>
                {inside()}
                {picture}
            </div>
        }
        .into_any(),
    }
}

/// The lead with the word of the state under it, and the two lines; without a lead the word begins the second line.
#[component]
fn Words(
    word: Signal<String>,
    lead: MaybeProp<String>,
    what: Signal<String>,
    second: MaybeProp<String>,
) -> impl IntoView {
    let said =
        move || (!word.with(String::is_empty)).then(|| view! { <span class="word">{word}</span> });
    let led = Memo::new(move |_| lead.with(Option::is_some));
    view! {
        {move || {
            led.get().then(|| view! { <span class="lead"><span>{move || lead.get()}</span>" "{said}</span>" " })
        }}
        <span class="words">
            <span class="what">{what}</span>
            " "
            <span class="under">
                {move || (!led.get()).then_some(said)}
                {move || second.get().map(|text| view! { <span class="second">{text}</span> })}
            </span>
        </span>
    }
}
