//! What holds a leg's heat.

use super::field::{ChoiceField, NumberField};
use super::store::Store;
use crate::plan::{Insulation, LegState, Metal};
use crate::report::words::{HeatLabel, Label};
use crate::system::insulation_resistance;
use crate::units::UnitSystem;
use leptos::prelude::*;

#[component]
pub(super) fn InsulationFields(leg: Memo<LegState>, set: Callback<LegState>) -> impl IntoView {
    let store = expect_context::<Store>();
    let shown = Signal::derive(move || {
        let resistance = leg.get().insulation.map_or(0.0, insulation_resistance);
        store.units.get().resistance(resistance).figure
    });
    let set_insulation = Callback::new(move |figure: f64| {
        let resistance = store.units.get_untracked().resistance_from(figure);
        // Nought takes it away; what no wrap can be is refused by the plan's limits.
        let insulation = (figure != 0.0).then_some(Insulation::Resistance(resistance));
        set.run(LegState {
            insulation,
            ..leg.get_untracked()
        });
    });
    let metals = vec![
        (
            "galvanized",
            Label::Heat(HeatLabel::MetalGalvanized),
            Metal::Galvanized,
        ),
        (
            "aluminium",
            Label::Heat(HeatLabel::MetalAluminium),
            Metal::Aluminium,
        ),
    ];
    let is_chosen = Callback::new(move |metal| leg.get().metal == metal);
    let set_metal = Callback::new(move |metal| {
        set.run(LegState {
            metal,
            ..leg.get_untracked()
        });
    });
    view! {
        <NumberField id="insulation" label=Label::Heat(HeatLabel::Insulation) hint=Label::Heat(HeatLabel::InsulationHint) unit=UnitSystem::resistance_unit shown set=set_insulation/>
        <ChoiceField id="metal" label=Label::Heat(HeatLabel::Metal) choices=metals is_chosen set=set_metal/>
    }
}
