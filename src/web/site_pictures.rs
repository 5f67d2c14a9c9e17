//! Pictures of the visit, from before and after the cleaning.

use super::file_button::FileButton;
use super::open_visit::change_visit;
use super::picture_scaling::small_jpeg;
use super::site_words::site_text;
use super::store::{Store, label_text};
use crate::editor::VisitChange;
use crate::plan::{PictureCoding, Taken, Visit, VisitPicture};
use crate::report::words::{Label, Message, SiteLabel, SiteMessage};
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::File;

#[component]
pub(super) fn Pictures(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let pictures = Memo::new(move |_| visit.with(|visit| visit.pictures.clone()));
    let shown = move || {
        let pictures = pictures.get().into_iter().enumerate();
        pictures
            .map(|(index, picture)| {
                let name = picture_name(store, index, &picture);
                let remove = format!("{} {name}", site_text(SiteLabel::Remove));
                let kind = picture.coding.media_type();
                let source = format!("data:{kind};base64,{}", picture.data_base64);
                view! {
                    <li>
                        <figure>
                            <img src=source alt=name.clone()/>
                            <figcaption>{name}</figcaption>
                        </figure>
                        <button
                            type="button"
                            class="site-remove"
                            aria-label=remove
                            on:click=move |_| change_visit(store, VisitChange::RemovePicture(index))
                        >
                            {site_text(SiteLabel::Remove)}
                        </button>
                    </li>
                }
            })
            .collect_view()
    };
    view! {
        <h3>{site_text(SiteLabel::PicturesHeading)}</h3>
        <p class="fine">{site_text(SiteLabel::PicturesHint)}</p>
        <ul class="site-pictures">{shown}</ul>
        <div class="site-buttons">
            <AddPicture taken=Taken::Before label=SiteLabel::AddBefore id="visit-picture-before"/>
            <AddPicture taken=Taken::After label=SiteLabel::AddAfter id="visit-picture-after"/>
        </div>
    }
}

/// What a picture is called: when it was taken, and its number.
fn picture_name(store: Store, index: usize, picture: &VisitPicture) -> String {
    store.say(Message::Site(SiteMessage::Picture(
        picture.taken,
        index + 1,
    )))
}

#[component]
fn AddPicture(taken: Taken, label: SiteLabel, id: &'static str) -> impl IntoView {
    let store = expect_context::<Store>();
    let chosen = Callback::new(move |file| add(store, taken, file));
    view! { <FileButton label=site_text(label) id accept="image/*" chosen/> }
}

fn add(store: Store, taken: Taken, file: File) {
    spawn_local(async move {
        if let Some(data) = small_jpeg(&file).await {
            let picture = VisitPicture {
                taken,
                coding: PictureCoding::Jpeg,
                data_base64: data.into(),
            };
            change_visit(store, VisitChange::AddPicture(picture));
        } else {
            let why = site_text(SiteLabel::PictureUnreadable);
            let kept = label_text(Label::PlanKept);
            store.trouble.set(format!("{why} {kept}"));
        }
    });
}
