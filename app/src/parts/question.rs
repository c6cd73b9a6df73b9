//! One plain question a line, for the look-over.

use leptos::prelude::*;

use super::ids;

/// What was answered. Nothing is preset: a question may also have no answer yet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Answer {
    /// No.
    No,
    /// Yes.
    Yes,
    /// Not looked at, said so.
    NotLookedAt,
}

impl Answer {
    /// The answers in the order of the keys.
    pub const ALL: [Self; 3] = [Self::No, Self::Yes, Self::NotLookedAt];
}

/// The words of the three answers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AnswerWords {
    /// "No".
    pub no: String,
    /// "Yes".
    pub yes: String,
    /// "Not looked at".
    pub not_looked_at: String,
}

impl AnswerWords {
    fn of(&self, answer: Answer) -> String {
        match answer {
            Answer::No => self.no.clone(),
            Answer::Yes => self.yes.clone(),
            Answer::NotLookedAt => self.not_looked_at.clone(),
        }
    }
}

/// A question with its three keys.
#[component]
pub fn Question(
    /// The question.
    #[prop(into)]
    text: Signal<String>,
    /// The words of the answers.
    words: AnswerWords,
    /// What is chosen; nothing until the person has.
    #[prop(into)]
    chosen: Signal<Option<Answer>>,
    /// A key was chosen.
    #[prop(into)]
    on_answer: Callback<Answer>,
) -> impl IntoView {
    let group = ids::fresh("question");
    let label = ids::fresh("question-text");
    let labelled = label.clone();
    let keys = Answer::ALL
        .into_iter()
        .map(|answer| {
            view! {
                <label class="option">
                    <input
                        type="radio"
                        name=group.clone()
                        prop:checked=move || chosen.get() == Some(answer)
                        on:change=move |_| on_answer.run(answer)
                    />
                    <span class="option-face">{words.of(answer)}</span>
                </label>
            }
        })
        .collect_view();
    view! {
        <div class="question" role="radiogroup" aria-labelledby=labelled>
            <div class="question-in">
                <p class="question-text" id=label>{text}</p>
                <div class="keys">{keys}</div>
            </div>
        </div>
    }
}
