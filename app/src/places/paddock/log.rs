//! The turnouts of the last days, and correcting the times of one.

use super::at::{AtGrass, YardZone};
use crate::device::clock;
use crate::parts::{Field, Keyboard, Quiet, QuietRow, Row, Rows, WideKey};
use leptos::prelude::*;
use tussock_core::units::Zone;
use tussock_flow::acts::Act;
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

    /// Opens the times of a turnout.
    fn open(self, outing: &Outing, zone: &YardZone) {
        let words = English::default();
        self.out.set(words.time_at(outing.out, zone));
        let came_in = outing.body.came_in.map(|at| words.time_at(at, zone));
        self.came_in.set(came_in.unwrap_or_default());
        self.wrong.set(None);
        self.which.set(Some(outing.clone()));
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
                let which = outing.clone();
                let open = Callback::new(move |()| form.open(&which, &untrack(|| self.zone())));
                view! {
                    <Row
                        name=words.outing(outing, today, &zone)
                        value=Some(words.outing_time(outing.time))
                        strong=true
                        second=Some(words.outing_second(outing)).filter(|second| !second.is_empty())
                        press=open
                    />
                }
            })
            .collect_view();
        view! {
            <h2>{words.last_turnouts()}</h2>
            <Rows name=words.last_turnouts()>{rows}</Rows>
        }
        .into_any()
    }

    /// The turnout whose times are corrected, as it is written now; `None` when it is there no longer.
    fn corrected(self, form: Correcting) -> Option<Outing> {
        let id = form
            .which
            .with_untracked(|which| Some(which.as_ref()?.id.clone()))?;
        self.view.with_untracked(|view| {
            let mut outings = view
                .iter()
                .flat_map(|view| &view.goes)
                .flat_map(|goes| &goes.outings);
            outings.find(|outing| outing.id == id).cloned()
        })
    }

    /// The two fields, while a time is corrected.
    pub(super) fn correcting(self, form: Correcting) -> impl IntoView {
        let words = English::default();
        let save = Callback::new(move |()| {
            let Some(outing) = self.corrected(form) else {
                form.which.set(None);
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
        let remove = Callback::new(move |()| {
            if let Some(outing) = self.corrected(form) {
                self.write(Act::Remove(outing.id));
            }
            form.which.set(None);
        });
        let error =
            Signal::derive(move || form.wrong.get().map(|wrong| words.turnout_wrong(&wrong)));
        // Which one, so that another row does not open under the name of this one.
        let shown = Memo::new(move |_| form.which.with(|which| Some(which.as_ref()?.id.clone())));
        move || {
            shown
                .get()
                .and_then(|_| form.which.get_untracked())
                .map(|which| {
                    let zone = untrack(|| self.zone());
                    let today = zone.to_local(clock::now()).date;
                    view! {
                        <h2>{words.outing(&which, today, &zone)}</h2>
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
                        <QuietRow><Quiet says=words.was_not_out() press=remove /></QuietRow>
                    }
                })
        }
    }
}
