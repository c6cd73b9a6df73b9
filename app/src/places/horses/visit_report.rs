//! The summary of a visit, the draft of its report, and its end.

use super::visit::changes;
use crate::device::clock::{self, DeviceZone};
use crate::device::share::{self, TextFile};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Frame, FrameKind, Page, Press, Quiet, QuietRow, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::forms::yard_visit::end;
use tussock_flow::routes::Route;
use tussock_flow::views::yard_visit::needs;
use tussock_flow::views::yard_visit::report::report;
use tussock_flow::words::{English, HorsesWords, YardVisitWords};

/// The field of the report.
const REPORT: &str = "report";

/// The summary and the report of the visit that is under way.
#[component]
pub fn VisitReport() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::VisitReport.to_string());
    let shelf = world.shelf(needs);
    let minute = world.minute();
    let of = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => report(&shelf, now, &DeviceZone),
        _ => None,
    });
    let drafted = Memo::new(move |_| {
        of.with(|of| {
            of.as_ref()
                .map(|(_, report)| words.draft_report(report))
                .unwrap_or_default()
        })
    });
    // As typed, else as drafted from the records.
    let text = Signal::derive(move || form.held(REPORT).unwrap_or_else(|| drafted.get()));
    let said = Signal::derive(move || {
        of.with(|of| match of {
            None if shelf.with(Option::is_none) => words.opening().to_owned(),
            None => words.no_visit().to_owned(),
            Some((visit, _)) => words.summary_sentence(visit),
        })
    });
    let sent = RwSignal::new(None);
    let send = Callback::new(move |()| {
        let Some((_, report)) = of.get_untracked() else {
            return;
        };
        let file = TextFile {
            name: words.report_file(report.on),
            kind: "text/plain",
            text: text.get_untracked(),
        };
        sent.set(None);
        leptos::task::spawn_local(async move {
            sent.try_set(Some(share::send(file).await));
        });
    });
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let press = Callback::new(move |()| {
        let Some((visit, _)) = of.get_untracked() else {
            return;
        };
        let act = end(&visit.held, &text.get_untracked(), clock::now());
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Horses);
            } else {
                failed.try_set(true);
            }
        });
    });
    let there = Memo::new(move |_| of.with(Option::is_some));
    let changed_by_hand = Memo::new(move |_| form.held(REPORT).is_some());
    let foot = move || {
        let action = move || {
            if there.get() {
                view! { <Action says=words.end_visit() press=press busy=busy /> }.into_any()
            } else {
                let route = Route::Horses.to_string();
                view! { <Action says=words.horses() press=route /> }.into_any()
            }
        };
        view! {
            <Show when=move || there.get()>
                <QuietRow>
                    <Quiet says=words.send_report() press=send />
                    <Show when=move || changed_by_hand.get()>
                        <Quiet says=words.draft_anew() press=Callback::new(move |()| form.throw_away()) />
                    </Show>
                </QuietRow>
            </Show>
            <p class="soft" role="status">{move || sent.get().map(|sent| words.report_sent(sent))}</p>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Visit.to_string()) }>
                {action}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.the_visit() foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {draft_line(form)}
            <Show when=move || there.get()>
                {move || of.with(|of| of.as_ref().map(|(_, report)| changes(report.since.as_ref())))}
                <Page
                    label=words.report_label()
                    hint=Signal::stored(words.report_hint().to_owned())
                    value=text
                    on_input=form.typed(REPORT)
                />
            </Show>
        </Frame>
    }
}
