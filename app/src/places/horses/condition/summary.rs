//! All sites of the walk-round, and the save.

use super::Walk;
use crate::parts::{
    Action, ActionRow, Column, Frame, FrameKind, Picture, Quiet, QuietRow, Sentence, SiteCord,
    SiteCords, Table,
};
use crate::places::Saving;
use leptos::prelude::*;
use tussock_core::assess::{ConditionScale, Site};
use tussock_flow::forms::condition::{Mark, NEW, WHO, Wrong, act, score, scorer};
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::condition::{Before, summary};
use tussock_flow::words::{AssessWords, ConditionWords, LogWords};

/// All sites: the sentence, the cords, the table, and the save.
#[component]
#[allow(
    clippy::too_many_lines,
    reason = "one screen: what is said, what is drawn, what is saved"
)]
pub(super) fn AllSites(
    walk: Walk,
    name: Signal<String>,
    scale: ConditionScale,
    children: Children,
) -> impl IntoView {
    let words = walk.words;
    let world = walk.world;
    let form = walk.form;
    let sites = Signal::derive(move || walk.scored(scale));
    let made = Memo::new(move |_| score(scale, &sites.get()));
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
    let save_and = move |second: bool| {
        let animal = walk.animal.get_value();
        let last = world.who.get_untracked();
        // Who is new and said by half is asked before the first site, and stands there.
        let Ok(by) = scorer(|field| form.now(field), last.as_ref()) else {
            return world.go(&Route::ConditionWho(animal));
        };
        let both = walk.begin.get_untracked().is_some_and(|begin| begin.second);
        let sites = sites.get_untracked();
        match act(&animal, scale, &sites, &by, &world.yard(), &form.id("id")) {
            Err(error) => wrong.set(Some(error)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_err() {
                        failed.try_set(true);
                    } else if second {
                        // The first score is not shown on the way: the form begins anew, at who scores.
                        form.empty();
                        form.set(WHO, NEW.to_owned());
                        world.go(&Route::ConditionWho(animal));
                    } else if both {
                        world.go(&Route::ConditionTwo(animal));
                    } else {
                        world.go(&Route::Horse(animal));
                    }
                });
            }
        }
    };
    let save = Callback::new(move |()| save_and(false));
    let save_then_second = Callback::new(move |()| save_and(true));
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
            <ActionRow back=walk.back(scale, Step::SUMMARY)>
                <Action says=words.save_condition() press=save busy=busy />
            </ActionRow>
        }
    };
    let figure = move |site: Site| match walk.mark(scale, site) {
        Some(Mark::Score(score)) => words.step_figure(score),
        Some(Mark::Skipped) | None => words.left_out().to_owned(),
    };
    // What was left out now is not told from last time either.
    let last_of = move |site: Site| {
        walk.mark(scale, site)
            .filter(|mark| matches!(mark, Mark::Score(_)))
            .and_then(|_| walk.last.get().as_ref().and_then(Before::same)?.site(site))
    };
    let cords = Signal::derive(move || {
        scale
            .sites()
            .iter()
            .map(|site| SiteCord {
                name: words.site(*site).to_owned(),
                now: match walk.mark(scale, *site) {
                    Some(Mark::Score(score)) => Some(score),
                    Some(Mark::Skipped) | None => None,
                },
                last: last_of(*site),
                other: None,
                said: figure(*site),
            })
            .collect::<Vec<_>>()
    });
    let rows = Signal::derive(move || {
        scale
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
    let again = scale
        .sites()
        .iter()
        .enumerate()
        .filter_map(|(at, site)| {
            let step = Step::new(u8::try_from(at + 1).ok()?)?;
            Some(view! { <Quiet says=words.site(*site) press=walk.route(step).to_string() /> })
        })
        .collect_view();
    let bounds = scale.bounds();
    let other_scale = move || {
        let other = summed.get()?.other?;
        Some(view! { <p>{words.on_the_other_scale(&other)}</p> })
    };
    let early = move || {
        let early = walk.begin.get()?.early?;
        Some(view! { <p class="soft">{words.scored_early(&early)}</p> })
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            {children()}
            <Picture sentence=said numbers_word=words.all_numbers() numbers=table>
                <SiteCords sites=cords ends=(bounds.min, bounds.max) />
            </Picture>
            <p class="soft small">
                {move || words.picture_key(scale, walk.last.get().as_ref().and_then(Before::same).is_some())}
            </p>
            {other_scale}
            {early}
            {findings}
            <Show when=move || summed.get().is_some_and(|summary| summary.noise)>
                <p class="soft">{words.within_noise()}</p>
            </Show>
            <Show when=move || !walk.begin.get().is_some_and(|begin| begin.second)>
                <QuietRow>
                    <Quiet says=words.then_a_second_person() press=save_then_second />
                </QuietRow>
            </Show>
            <QuietRow>{again}</QuietRow>
        </Frame>
    }
}
