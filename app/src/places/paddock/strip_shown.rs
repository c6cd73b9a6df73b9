//! What comes of a strip: its picture, its table, what to mind and what it cannot do.

use super::field::told;
use crate::parts::{Column, Picture, StripPicture, Table};
use leptos::prelude::*;
use tussock_core::graze::strip::LIMITS;
use tussock_flow::views::fields::{NoStrip, StripDrawing, StripTold};
use tussock_flow::words::{BalanceWords, English, StripWords};

/// The strip with its picture and its limits.
pub(super) fn comes_of(strip: &Result<StripTold, NoStrip>) -> AnyView {
    let words = English::default();
    let Ok(told_strip) = strip else {
        return ().into_any();
    };
    let fences = &told_strip.strip.fences;
    let minds = words
        .strip_minds(told_strip)
        .into_iter()
        .map(told)
        .collect_view();
    let limits = LIMITS
        .into_iter()
        .map(|limit| view! { <li>{words.strip_limit(limit).sentence}</li> })
        .collect_view();
    let rows = Signal::stored(words.strip_table(told_strip));
    let heads = words.strip_table_heads();
    let sentence = words.strip_picture(fences);
    let picture = StripDrawing::of(fences).map(|drawn| {
        let (lead, onward) = (words.lead_fence(fences), words.fence_onward(fences));
        let back = words.back_fence_at(fences);
        let table = move || {
            let [what, how] = heads;
            view! {
                <Table
                    caption=words.strip_table_caption()
                    columns=vec![Column::words(what), Column::words(how)]
                    rows=rows
                />
            }
        };
        view! {
            <Picture sentence=sentence numbers_word=BalanceWords::all_numbers(&words) numbers=table>
                <StripPicture drawn lead onward back />
            </Picture>
        }
    });
    view! {
        {minds}
        {picture}
        <h2>{words.limits_head()}</h2>
        <ul class="plain">{limits}</ul>
    }
    .into_any()
}
