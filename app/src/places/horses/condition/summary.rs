//! All six sites of the walk-round, and the save.

use super::Walk;
use crate::parts::{
    Action, ActionRow, Column, Frame, FrameKind, Picture, Quiet, QuietRow, Sentence, SiteCord,
    SiteCords, Table,
};
use crate::places::Saving;
use leptos::prelude::*;
use tussock_core::assess::Site;
use tussock_flow::forms::condition::{Mark, SCALE, Wrong, act, score};
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::condition::summary;
use tussock_flow::words::{AssessWords, ConditionWords, LogWords};

/// All six sites: the sentence, the cords, the table, and the save.
#[component]
pub(super) fn AllSites(walk: Walk, name: Signal<String>, children: Children) -> impl IntoView {
    let words = walk.words;
    let world = walk.world;
    let form = walk.form;
    let sites = Signal::derive(move || walk.scored());
    let made = Memo::new(move |_| score(&sites.get()));
    let summed = Memo::new(move |_| {
        let (score, _) = made.get().ok()?;
        Some(summary(&score, walk.last.get().as_ref()))
    });
    let said = Signal::derive(move || match summed.get() {
        Some(summary) => words.summary(&summary),
        None => words.not_scored_yet().to_owned(),
    });
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let animal = walk.animal.get_value();
        match act(&animal, &sites.get_untracked(), &form.id("id")) {
            Err(error) => wrong.set(Some(error)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Horse(animal));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let refused = move || {
        wrong.get().map(|wrong| {
            let text = match wrong {
                Wrong::Assess(error) => words.assess_error(&error),
                Wrong::Log(error) => words.log_error(&error),
            };
            view! { <p class="error">{text}</p> }
        })
    };
    let foot = move || {
        view! {
            <div role="alert">{refused}</div>
            <Saving failed=failed />
            <ActionRow back=walk.back(Step::SUMMARY)>
                <Action says=words.save_condition() press=save busy=busy />
            </ActionRow>
        }
    };
    let figure = move |site: Site| match walk.mark(site) {
        Some(Mark::Score(score)) => words.step_figure(score),
        Some(Mark::Skipped) | None => words.left_out().to_owned(),
    };
    // What was left out now is not told from last time either.
    let last_of = move |site: Site| {
        walk.mark(site)
            .filter(|mark| matches!(mark, Mark::Score(_)))
            .and_then(|_| walk.last.get()?.site(site))
    };
    let cords = Signal::derive(move || {
        SCALE
            .sites()
            .iter()
            .map(|site| SiteCord {
                name: words.site(*site).to_owned(),
                now: match walk.mark(*site) {
                    Some(Mark::Score(score)) => Some(score),
                    Some(Mark::Skipped) | None => None,
                },
                last: last_of(*site),
                said: figure(*site),
            })
            .collect::<Vec<_>>()
    });
    let rows = Signal::derive(move || {
        SCALE
            .sites()
            .iter()
            .map(|site| {
                vec![
                    words.site(*site).to_owned(),
                    figure(*site),
                    last_of(*site)
                        .map(|score| words.step_figure(score))
                        .unwrap_or_default(),
                ]
            })
            .collect::<Vec<_>>()
    });
    let table = move || {
        view! {
            <Table
                caption=words.site_by_site()
                columns=vec![
                    Column::words(words.site_column()),
                    Column::numbers(words.now_column()),
                    Column::numbers(words.last_column()),
                ]
                rows=rows
            />
        }
    };
    let findings = move || {
        made.get().ok().map(|(_, findings)| {
            findings
                .iter()
                .map(|finding| view! { <p class="soft">{words.assess_finding(finding).sentence}</p> })
                .collect_view()
        })
    };
    let again = SCALE
        .sites()
        .iter()
        .enumerate()
        .filter_map(|(at, site)| {
            let step = Step::new(u8::try_from(at + 1).ok()?)?;
            Some(view! { <Quiet says=words.site(*site) press=walk.route(step).to_string() /> })
        })
        .collect_view();
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            {children()}
            <Picture sentence=said numbers_word=words.all_numbers() numbers=table>
                <SiteCords sites=cords />
            </Picture>
            <p class="soft small">{move || words.picture_key(walk.last.get().is_some())}</p>
            {findings}
            <Show when=move || summed.get().is_some_and(|summary| summary.noise)>
                <p class="soft">{words.within_noise()}</p>
            </Show>
            <QuietRow>{again}</QuietRow>
        </Frame>
    }
}
