//! Who scores, and on which scale.

use super::Walk;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field, Frame, FrameKind, Offer, Press, Sentence,
};
use crate::places::Saving;
use leptos::prelude::*;
use tussock_core::assess::ConditionScale;
use tussock_core::log::bodies::Role;
use tussock_flow::forms::condition::{
    INITIALS, NEW, NOT_SAID, ROLE, ROLES, SCALE, SCALES, WHO, WhoWrong, role_of, scorer,
    text_of_role, text_of_scale,
};
use tussock_flow::routes::{Route, Step};
use tussock_flow::words::{ConditionWords, HorsesWords, LogWords};

/// Who scores, and on which scale. Nothing is saved here: it goes with the score.
#[component]
pub(super) fn Who(walk: Walk, name: Signal<String>, children: Children) -> impl IntoView {
    let words = walk.words;
    let form = walk.form;
    let wrong = RwSignal::new(Vec::<WhoWrong>::new());
    let start = Callback::new(move |()| {
        let last = walk.world.who.get_untracked();
        match scorer(|field| form.now(field), last.as_ref()) {
            Ok(_) => walk.world.go(&walk.route(Step::FIRST)),
            Err(faults) => wrong.set(faults),
        }
    });
    let foot = move || {
        let back = Route::Horse(walk.animal.get_value()).to_string();
        view! {
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>
                <Action says=words.start_scoring() press=start />
            </ActionRow>
        }
    };
    let usual = Memo::new(move |_| walk.begin.get().map(|begin| begin.usual));
    let scales = move || {
        let usual = usual.get();
        let offers = SCALES
            .into_iter()
            .map(|scale| {
                Offer::new(scale, words.scale_with_sites(scale))
                    .with(words.scale_from(scale, usual == Some(scale)))
            })
            .collect();
        view! {
            <Choice
                legend=words.which_scale()
                hint=words.one_scale().to_owned()
                offers=offers
                chosen=Signal::derive(move || walk.scale.get())
                on_choose=move |scale: ConditionScale| form.set(SCALE, text_of_scale(scale).to_owned())
            />
        }
    };
    let chosen = Signal::derive(move || {
        let said = walk.text(WHO);
        if said.is_empty() {
            walk.world.who.get().map(|who| who.0)
        } else {
            Some(said)
        }
    });
    let who = move || {
        let known = walk.persons.get();
        let offers = known
            .iter()
            .map(|person| Offer::new(person.id.0.clone(), words.scorer(person)))
            .chain([
                Offer::new(NEW.to_owned(), words.somebody_new()),
                Offer::new(NOT_SAID.to_owned(), words.who_not_said()),
            ])
            .collect();
        view! {
            <Choice
                legend=words.who_scores()
                offers=offers
                chosen=chosen
                on_choose=move |who: String| form.set(WHO, who)
            />
        }
    };
    let missing = move |which: WhoWrong| {
        Signal::derive(move || {
            let missing = wrong.with(|wrong| wrong.contains(&which));
            missing.then(|| words.who_wrong(which).to_owned())
        })
    };
    let role = form.text(ROLE);
    let is_new = Memo::new(move |_| walk.text(WHO) == NEW);
    let roles = move || {
        ROLES
            .into_iter()
            .map(|role| Offer::new(role, words.role(role)))
            .collect::<Vec<Offer<Role>>>()
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.who_and_which_scale(&name.get())) />
            {children()}
            {scales}
            {who}
            <Show when=move || is_new.get()>
                <Field
                    label=words.initials_label()
                    hint=words.initials_hint()
                    value=form.text(INITIALS)
                    on_input=form.typed(INITIALS)
                    error=missing(WhoWrong::Initials)
                />
                <Choice
                    legend=words.role_here()
                    hint=missing(WhoWrong::Role)
                    offers=roles()
                    chosen=Signal::derive(move || role.with(|text| role_of(text)))
                    on_choose=move |role: Role| form.set(ROLE, text_of_role(role).to_owned())
                />
            </Show>
        </Frame>
    }
}
