//! A lot of hay: its sugar, its hazards, its reports; and a new one.

use super::hay_form::HayForm;
use super::hay_stock::{links, stock_of, store};
use super::work::Work;
use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Quiet, QuietRow, Row, Rows, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_core::log::bodies::LotV1;
use tussock_core::units::Zone;
use tussock_flow::acts::Act;
use tussock_flow::forms::hay::without_report;
use tussock_flow::routes::Route;
use tussock_flow::views::hay::{Hay as Seen, hay};
use tussock_flow::words::{
    English, ForageWords, HayWords, HorsesWords, LogWords, ShedWords, TubWords, WorthWords,
};

/// What the two screens share.
#[derive(Clone, Copy)]
struct Writing {
    form: Form,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl Writing {
    fn of(form: Form) -> Self {
        Self {
            form,
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    fn write(self, act: Act, then: impl FnOnce() + 'static) {
        if self.busy.get_untracked() {
            return;
        }
        self.busy.set(true);
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                then();
            } else {
                self.failed.try_set(true);
            }
        });
    }

    fn save(
        self,
        fields: HayForm,
        id: &LotId,
        before: Option<&LotV1>,
        then: impl FnOnce() + 'static,
    ) {
        let today = DeviceZone.to_local(clock::now()).date;
        match fields.typed.get_untracked().act(id, before, today) {
            Ok(act) => {
                fields.wrong.set(Vec::new());
                self.write(act, then);
            }
            Err(wrong) => fields.wrong.set(wrong),
        }
    }
}

/// A new lot.
#[component]
pub fn NewHay() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::NewHay.to_string());
    let writing = Writing::of(form);
    let fields = HayForm::of(form);
    let save = Callback::new(move |()| {
        let id = LotId(form.id("id"));
        let there = Route::Hay(id.clone());
        writing.save(fields, &id, None, move || world.go(&there));
    });
    let foot = move || {
        view! {
            <Saving failed=writing.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                <Action says=words.save_hay() press=save busy=writing.busy />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=words.which_hay() />
            {draft_line(form)}
            {fields.fields()}
        </Frame>
    }
}

/// A lot.
#[component]
pub fn Hay(
    /// Which.
    lot: LotId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Hay(lot.clone()).to_string());
    let writing = Writing::of(form);
    let fields = HayForm::of(form);
    let id = StoredValue::new(lot);
    let work = Work::with_stock(world);
    let shelf = work.shelf;
    let seen = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => hay(&shelf, &id.get_value()),
        _ => None,
    });
    let editing = RwSignal::new(false);
    let edit = Callback::new(move |()| {
        if let Some(seen) = seen.get_untracked() {
            fields.fill(&seen.body);
        }
        editing.set(true);
    });
    let save = Callback::new(move |()| {
        if let Some(seen) = seen.get_untracked() {
            writing.save(fields, &id.get_value(), Some(&seen.body), move || {
                editing.try_set(false);
            });
        }
    });
    let said = move || match seen.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.no_such_hay().to_owned(),
        Some(Seen { body, read, .. }) => {
            let name = body.name.as_str();
            match read {
                Ok(read) => match read.judgement {
                    Some(judgement) => words.hay_verdict(name, &words.verdict(judgement.verdict)),
                    None => words.hay_clear(name),
                },
                Err(_) => name.to_owned(),
            }
        }
    };
    let inside = move || {
        if editing.get() {
            view! { {draft_line(form)} {fields.fields()} }.into_any()
        } else {
            seen.get()
                .map(|seen| shown(&writing, &id.get_value(), &seen, work))
                .into_any()
        }
    };
    let back = move || {
        if editing.get() {
            Press::from(Callback::new(move |()| editing.set(false)))
        } else {
            Press::from(Route::Shed.to_string())
        }
    };
    let foot = move || {
        view! {
            <Saving failed=writing.failed />
            {move || view! {
                <ActionRow back=Back { name: words.back().into(), press: back() }>
                    {if editing.get() {
                        view! { <Action says=words.save_hay() press=save busy=writing.busy /> }.into_any()
                    } else {
                        view! { <Action says=words.change_hay() press=edit /> }.into_any()
                    }}
                </ActionRow>
            }}
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf=shelf />
            {inside}
        </Frame>
    }
}

/// What is known of a lot.
fn shown(writing: &Writing, id: &LotId, seen: &Seen, work: Work) -> AnyView {
    let words = English::default();
    let why = words.why_asked();
    let read = match &seen.read {
        Ok(read) => read,
        Err(error) => {
            return view! { <Caution said=words.log_error(error) /> {reports(writing, id, seen)} }
                .into_any();
        }
    };
    let judged = read.judgement.as_ref().map(|judgement| {
        let said = words.judgement(judgement);
        let ways = judgement
            .ways_out
            .iter()
            .map(|way| view! { <Row name=words.way_out(*way) /> })
            .collect_view();
        let ways = (!judgement.ways_out.is_empty()).then(
            || view! { <h2>{words.ways_out()}</h2> <Rows name=words.ways_out()>{ways}</Rows> },
        );
        view! {
            <p>{said.why}</p>
            <p class="soft">{words.judged_for()}</p>
            {ways}
        }
    });
    let outlook = read.outlook.as_ref().map(|outlook| {
        let said = words.test_outlook(outlook);
        let pays = Press::from(Route::WorthOfTest(id.clone()).to_string());
        view! {
            <p>{said.sentence} ". " {said.why}</p>
            <QuietRow><Quiet says=words.does_a_test_pay() press=pays /></QuietRow>
        }
    });
    let hazards = read
        .hazards
        .iter()
        .map(|hazard| words.hazard(*hazard))
        .chain(
            read.findings
                .iter()
                .map(|finding| words.report_finding(*finding)),
        )
        .map(|said| match said.why {
            Some(reason) => {
                view! { <Caution said=said.sentence why=why>{reason}</Caution> }.into_any()
            }
            None => view! { <Caution said=said.sentence /> }.into_any(),
        })
        .collect_view();
    view! {
        <p>{words.forage_class(seen.body.class)} ". " {words.dry_line(read.dry.as_ref())} "."</p>
        {judged}
        {outlook}
        {hazards}
        {store(&read.lot, work)}
        {stock_of(id, seen.body.price.is_some(), work)}
        {links(id)}
        {reports(writing, id, seen)}
    }
    .into_any()
}

fn reports(writing: &Writing, id: &LotId, seen: &Seen) -> AnyView {
    let (words, writing) = (English::default(), *writing);
    if seen.body.reports.is_empty() {
        return ().into_any();
    }
    let rows = seen
        .body
        .reports
        .iter()
        .enumerate()
        .map(|(index, report)| {
            let act = without_report(id, &seen.body, index);
            let remove = Callback::new(move |()| {
                if let Some(act) = act.clone() {
                    writing.write(act, || {});
                }
            });
            let lines = report
                .values
                .iter()
                .map(|value| {
                    let shown = format!(
                        "{} {}",
                        value.reported.value.digits(),
                        value.reported.unit.as_str()
                    );
                    view! { <Row name=words.analyte(value.analyte) value=shown /> }
                })
                .collect_view();
            view! {
                <p>{words.report_line(report)}</p>
                <Rows name=words.reports()>{lines}</Rows>
                <QuietRow><Quiet says=words.remove_report() press=remove /></QuietRow>
            }
        })
        .collect_view();
    view! { <h2>{words.reports()}</h2> {rows} }.into_any()
}
