//! The turnouts of the last days, and correcting the times of one.

use super::at::AtGrass;
use crate::device::clock;
use crate::parts::{Field, Keyboard, Quiet, QuietRow, Row, Rows, WideKey};
use leptos::prelude::*;
use tussock_flow::forms::turnout::{Wrong, correct};
use tussock_flow::views::paddock::{Goes, Outing};
use tussock_flow::words::{English, HorsesWords, PaddockWords, UnitWords};

/// The turnout whose times are corrected.
#[derive(Clone, Copy)]
pub(super) struct Correcting {
    which: RwSignal<Option<Outing>>,
    out: RwSignal<String>,
    came_in: RwSignal<String>,
    wrong: RwSignal<Option<Wrong>>,
}

impl Correcting {
    pub(super) fn new() -> Self {
        Self {
            which: RwSignal::new(None),
            out: RwSignal::new(String::new()),
            came_in: RwSignal::new(String::new()),
            wrong: RwSignal::new(None),
        }
    }
}

impl AtGrass {
    /// The turnouts, the newest first.
    pub(super) fn turnouts(self, goes: &Goes, form: Correcting) -> AnyView {
        let words = English::default();
        let zone = self.zone();
        let today = goes.window.day;
        if goes.outings.is_empty() {
            return view! { <h2>{words.last_turnouts()}</h2> <p class="soft">{words.no_turnout_yet()}</p> }
                .into_any();
        }
        let rows = goes
            .outings
            .iter()
            .map(|outing| {
                view! {
                    <Row
                        name=words.outing(outing, today, &zone)
                        value=Some(words.outing_time(outing.time))
                        strong=true
                        second=Some(words.outing_second(outing)).filter(|second| !second.is_empty())
                    />
                }
            })
            .collect_view();
        let newest = goes.outings.first().cloned();
        let open = Callback::new(move |()| {
            let zone = self.zone();
            if let Some(outing) = &newest {
                form.out.set(words.time_at(outing.out, &zone));
                let came_in = outing.body.came_in.map(|at| words.time_at(at, &zone));
                form.came_in.set(came_in.unwrap_or_default());
                form.wrong.set(None);
                form.which.set(Some(outing.clone()));
            }
        });
        view! {
            <h2>{words.last_turnouts()}</h2>
            <Rows name=words.last_turnouts()>{rows}</Rows>
            <QuietRow><Quiet says=words.correct_out_times() press=open /></QuietRow>
        }
        .into_any()
    }

    /// The two fields, while a time is corrected.
    pub(super) fn correcting(self, form: Correcting) -> impl IntoView {
        let words = English::default();
        let save = Callback::new(move |()| {
            let Some(outing) = form.which.get_untracked() else {
                return;
            };
            let of = (&outing.id, outing.out, &outing.body);
            let (out, came_in) = (form.out.get_untracked(), form.came_in.get_untracked());
            match untrack(|| correct(of, &out, &came_in, clock::now(), &self.zone())) {
                Ok(act) => {
                    form.which.set(None);
                    self.write(act);
                }
                Err(wrong) => form.wrong.set(Some(wrong)),
            }
        });
        let error =
            Signal::derive(move || form.wrong.get().map(|wrong| words.turnout_wrong(&wrong)));
        let shown = Memo::new(move |_| form.which.with(Option::is_some));
        move || {
            shown.get().then(|| {
                view! {
                    <Field
                        label=words.out_at()
                        value=form.out
                        on_input=Callback::new(move |text| form.out.set(text))
                        error=error
                        keyboard=Keyboard::Decimal
                    />
                    <Field
                        label=words.in_at()
                        value=form.came_in
                        on_input=Callback::new(move |text| form.came_in.set(text))
                        keyboard=Keyboard::Decimal
                    />
                    <WideKey says=words.save() means=words.correct_out_times() act=save />
                }
            })
        }
    }
}
