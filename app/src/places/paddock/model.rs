//! What the reckoning of grass rests on: the trials it was tuned to, and every number with its source.

use crate::parts::{Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Sentence, Sourced};
use leptos::prelude::*;
use tussock_flow::routes::Route;
use tussock_flow::views::grass_model::{Base, TrialRow, trials};
use tussock_flow::words::{ConditionWords, English, GrassModelWords, HorsesWords, PaddockWords};

/// What the reckoning of grass rests on.
#[component]
pub fn GrassModel() -> impl IntoView {
    let words = English::default();
    let back = || Route::Paddock.to_string();
    let foot = move || {
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back()) }>
                <Action says=words.back_to_the_paddock() press=back() />
            </ActionRow>
        }
    };
    let rows = trials();
    let beyond = rows
        .iter()
        .filter_map(|row| words.beyond_the_most(&row.tried))
        .map(|said| view! { <Caution said=said /> })
        .collect_view();
    let tuned = words.tuned_to_these();
    view! {
        <Frame kind=FrameKind::Flow what=words.paddock() foot=foot>
            <Sentence said=words.grass_model_head() />
            <Caution said=tuned.sentence why=words.why()><p>{tuned.why}</p></Caution>
            <p>{words.model_in_words()}</p>
            {table(&rows)}
            {beyond}
            {numbers(words.model_numbers(), words.ends_in_words(), &Base::MODEL)}
            {numbers(words.muzzle_numbers(), words.muzzle_in_words(), &Base::MUZZLE)}
        </Frame>
    }
}

/// The trials: seen beside reckoned.
fn table(rows: &[TrialRow]) -> AnyView {
    let words = English::default();
    let [trial, seen, reckoned, ends] = words.trial_columns();
    let body = rows
        .iter()
        .map(|row| {
            let name = words.trial(row.tried.trial);
            let shown = words.seen_in_trial(&row.tried);
            let [mark, citation] = words.trial_from(row);
            view! {
                <tr>
                    <th scope="row">{name}</th>
                    <td class="n" data-head=seen>
                        <Sourced
                            shown=shown.clone()
                            asks=words.number_from_where()
                            value=format!("{name}: {shown} %")
                            mark=mark
                            citation=citation
                        />
                    </td>
                    <td class="n" data-head=reckoned>{words.reckoned_of_trial(&row.tried)}</td>
                    <td class="n" data-head=ends>{words.ends_of_trial(&row.tried)}</td>
                </tr>
            }
        })
        .collect_view();
    view! {
        <table class="table" data-wide="">
            <caption>{words.trials_head()}</caption>
            <thead>
                <tr>
                    <th scope="col">{trial}</th>
                    <th scope="col" class="n">{seen}</th>
                    <th scope="col" class="n">{reckoned}</th>
                    <th scope="col" class="n">{ends}</th>
                </tr>
            </thead>
            <tbody>{body}</tbody>
        </table>
    }
    .into_any()
}

/// Numbers with their sources, under what they are for.
fn numbers(head: &'static str, means: &'static str, of: &[Base]) -> AnyView {
    let words = English::default();
    let rows = of
        .iter()
        .map(|base| {
            let name = words.base(*base);
            let shown = words.base_value(*base);
            let [mark, citation] = words.base_from(*base);
            view! {
                <li>
                    <div class="row">
                        <span class="row-name">{name}</span>
                        " "
                        <span class="row-value">
                            <Sourced
                                shown=shown.clone()
                                asks=words.number_from_where()
                                value=format!("{name}: {shown}")
                                mark=mark
                                citation=citation
                            />
                        </span>
                    </div>
                </li>
            }
        })
        .collect_view();
    view! {
        <h2>{head}</h2>
        <p>{means}</p>
        <ul class="rows" aria-label=head>{rows}</ul>
    }
    .into_any()
}
