//! The form of a lot: name, class, dry matter, and a laboratory report as it is printed.

use super::{came_form, paste_report};
use crate::form::Form;
use crate::parts::{Caution, Choice, Field, Keyboard, Offer};
use leptos::prelude::*;
use tussock_core::forage::{Analyte, Basis, Fed, ForageClass, LabReport, ReportFinding};
use tussock_core::log::bodies::LotV1;
use tussock_flow::forms::delivery::Typed as Came;
use tussock_flow::forms::hay::{CLASSES, LINES, Typed, Wrong};
use tussock_flow::words::{English, ForageWords, HayWords};

const BASES: [(Basis, &str); 2] = [(Basis::DryMatter, "dry"), (Basis::AsFed, "as-fed")];
const FEDS: [(Fed, &str); 2] = [(Fed::Dry, "dry"), (Fed::Soaked, "soaked")];

/// What is typed, as a signal, and what was read of it.
#[derive(Clone, Copy)]
pub(super) struct HayForm {
    pub(super) form: Form,
    /// What is typed.
    pub typed: Signal<Typed>,
    /// What is wrong, once saving was tried.
    pub wrong: RwSignal<Vec<Wrong>>,
}

impl HayForm {
    /// The form over these fields.
    pub(super) fn of(form: Form) -> Self {
        let (name, class, dry) = (form.text("name"), form.text("class"), form.text("dry"));
        let (basis, fed) = (form.text("basis"), form.text("fed"));
        let values: Vec<(Analyte, Signal<String>)> = LINES
            .into_iter()
            .map(|analyte| (analyte, form.text(analyte.field())))
            .collect();
        let values = StoredValue::new(values);
        let came = came_form::typed(form);
        let typed = Signal::derive(move || Typed {
            name: name.get(),
            class: class.with(|class| {
                CLASSES
                    .iter()
                    .find(|(_, key)| key == class)
                    .map(|(class, _)| *class)
            }),
            dry: dry.get(),
            basis: basis.with(|basis| {
                BASES
                    .iter()
                    .find(|(_, key)| key == basis)
                    .map(|(basis, _)| *basis)
            }),
            fed: fed.with(|fed| {
                FEDS.iter()
                    .find(|(_, key)| key == fed)
                    .map_or(Fed::Dry, |(fed, _)| *fed)
            }),
            values: values.with_value(|values| {
                values
                    .iter()
                    .map(|(analyte, text)| (*analyte, text.get()))
                    .collect()
            }),
            came: came.get(),
        });
        Self {
            form,
            typed,
            wrong: RwSignal::new(Vec::new()),
        }
    }

    /// Fills in what is stored, where nothing was typed.
    pub(super) fn fill(self, body: &LotV1) {
        let set = |field: &str, text: &str| {
            if self.form.now(field).is_empty() {
                self.form.set(field, text.to_owned());
            }
        };
        set("name", body.name.as_str());
        let class = CLASSES.iter().find(|(class, _)| *class == Some(body.class));
        if let Some((_, key)) = class {
            set("class", key);
        }
        if let Some(dry) = &body.dry_matter {
            set("dry", dry.value.digits());
        }
        for (field, text) in Came::of(body) {
            set(field, &text);
        }
    }

    pub(super) fn said(
        self,
        which: impl Fn(&Wrong) -> bool + Send + Sync + 'static,
    ) -> Signal<Option<String>> {
        let words = English::default();
        Signal::derive(move || {
            let wrong = self.wrong.get().into_iter().find(|wrong| which(wrong))?;
            Some(words.hay_wrong(&wrong))
        })
    }

    /// The fields.
    pub(super) fn fields(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let typed = self.typed;
        let read = Memo::new(move |_| typed.get().report().ok().flatten());
        let class = Signal::derive(move || typed.with(|typed| typed.class));
        let offers = CLASSES
            .iter()
            .map(|(class, _)| match class {
                None => Offer::new(None, words.class_unknown()).with(words.class_unknown_means()),
                Some(class) => Offer::new(Some(*class), words.forage_class(*class)),
            })
            .collect();
        let choose_class = Callback::new(move |class: Option<ForageClass>| {
            if let Some((_, key)) = CLASSES.iter().find(|(offered, _)| *offered == class) {
                form.set("class", (*key).to_owned());
            }
        });
        view! {
            <Field
                label=words.hay_name()
                hint=words.hay_name_hint()
                value=form.text("name")
                on_input=form.typed("name")
                error=self.said(|wrong| matches!(wrong, Wrong::NoName))
            />
            <Choice
                legend=words.hay_class()
                offers=offers
                chosen=class
                on_choose=choose_class
                hint=self.said(|wrong| matches!(wrong, Wrong::NoClass))
            />
            <Field
                label=words.dry_matter_label()
                hint=words.dry_matter_hint()
                value=form.text("dry")
                on_input=form.typed("dry")
                error=self.said(|wrong| matches!(wrong, Wrong::Dry(_)))
                unit="%".to_owned()
                keyboard=Keyboard::Decimal
            />
            {self.came()}
            <h2>{words.lab_report()}</h2>
            <p class="soft">{words.lab_report_hint()}</p>
            {paste_report::view(self)}
            <Choice
                legend=words.which_basis()
                offers=BASES.iter().map(|(basis, _)| Offer::new(*basis, words.report_basis(*basis))).collect()
                chosen=Signal::derive(move || typed.with(|typed| typed.basis))
                on_choose=move |basis: Basis| {
                    if let Some((_, key)) = BASES.iter().find(|(offered, _)| *offered == basis) {
                        form.set("basis", (*key).to_owned());
                    }
                }
                hint=Signal::derive(move || {
                    let wrong = self.wrong.with(|wrong| wrong.contains(&Wrong::NoBasis));
                    Some(if wrong { words.hay_wrong(&Wrong::NoBasis) } else { words.which_basis_hint().to_owned() })
                })
            />
            <Choice
                legend=words.sample_was()
                offers=FEDS.iter().map(|(fed, _)| Offer::new(*fed, words.sample(*fed))).collect()
                chosen=Signal::derive(move || Some(typed.with(|typed| typed.fed)))
                on_choose=move |fed: Fed| {
                    if let Some((_, key)) = FEDS.iter().find(|(offered, _)| *offered == fed) {
                        form.set("fed", (*key).to_owned());
                    }
                }
            />
            {LINES.into_iter().map(|analyte| self.line(analyte, read)).collect_view()}
            {move || self.findings(read)}
        }
        .into_any()
    }

    /// A line of the report, with what it is on dry matter beside it.
    fn line(
        self,
        analyte: Analyte,
        read: Memo<Option<(LabReport, Vec<ReportFinding>)>>,
    ) -> impl IntoView {
        let words = English::default();
        let field = analyte.field();
        let text = self.form.text(field);
        let echo = Signal::derive(move || {
            if text.with(|text| text.trim().is_empty()) {
                return None;
            }
            read.with(|read| {
                let share = read.as_ref()?.0.share(analyte)?;
                Some(words.line_echo(analyte, analyte.in_unit(share)))
            })
        });
        let error = self.said(move |wrong| matches!(wrong, Wrong::Line(of, _) if *of == analyte));
        view! {
            <Field
                label=words.analyte(analyte)
                value=text
                on_input=self.form.typed(field)
                error=error
                echo=echo
                unit=words.line_unit(analyte).to_owned()
                keyboard=Keyboard::Decimal
            />
        }
    }

    /// What to look at again, and why the report cannot be read as it is.
    fn findings(self, read: Memo<Option<(LabReport, Vec<ReportFinding>)>>) -> AnyView {
        let words = English::default();
        let found = read.get().map(|(_, findings)| findings).unwrap_or_default();
        let refused = self.typed.with(|typed| match typed.report() {
            Err(wrong) => wrong
                .into_iter()
                .find(|wrong| matches!(wrong, Wrong::Report(_)))
                .map(|wrong| words.hay_wrong(&wrong)),
            Ok(_) => None,
        });
        let found = found
            .into_iter()
            .map(|finding| words.report_finding(finding).sentence)
            .chain(refused)
            .map(|said| view! { <Caution said=said /> })
            .collect_view();
        view! { <div role="status">{found}</div> }.into_any()
    }
}
