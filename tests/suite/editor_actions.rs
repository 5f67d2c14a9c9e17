//! Random actions of a person at the drawing: mostly sensible, often not.

use crate::editor_room::at_the_room;
use crate::random_plan::{elbow, with_blower, with_stated_airflow};
use elbowroom::editor::{Action, State, VisitChange};
use elbowroom::plan::{
    self, Against, AlongRun, BendMethod, CodeChoice, ConcealedElbows, Conditions, Done, Duct,
    Elbow, ElbowKind, ElementId, Entry, Estimate, Exhaust, Flow, Found, Handover, Input,
    Insulation, LegState, Look, MakerLimits, Measured, Mended, Metal, NodeId, Override, Part,
    Phase, PictureCoding, Plan, Point, Preparation, Reading, RuleTopic, Site, Taken, Termination,
    TerminationKind, VisitPicture,
};
use elbowroom::rules::RULE_SETS;
use elbowroom::units::{Airflow, Length, Pressure, Temperature, UnitSystem};
use proptest::prelude::*;
use std::ops::Range;
use std::sync::Arc;

/// An action whose place on the drawing hangs on where the run is when it is taken.
#[derive(Debug, Clone)]
pub enum Step {
    /// Taken as it is.
    Plain(Action),
    /// A press at, or a little off, a part of the run.
    PressOn(Spot, (f64, f64), f64),
    /// A drag to, or a little off, a part of the run: lines catch it and corners fall together.
    DragTo(Spot, (f64, f64), f64),
    /// A press in the middle of one of the things that are there.
    PressOnThing(prop::sample::Index, f64, bool),
}

/// A part of the run, whichever way it is drawn by now.
#[derive(Debug, Clone, Copy)]
pub enum Spot {
    Corner(prop::sample::Index),
    MiddleOfLeg(prop::sample::Index),
    Outlet,
}

impl Step {
    /// The action that it means in `state`.
    pub fn action(&self, state: &State) -> Action {
        let on = |spot: Spot, off: (f64, f64)| {
            let at = spot.point(&state.plan);
            Point::new(at.x + off.0, at.y + off.1)
        };
        match self {
            Self::Plain(action) => action.clone(),
            Self::PressOn(spot, off, reach) => Action::Press {
                at: on(*spot, *off),
                reach: *reach,
                adds: false,
            },
            Self::PressOnThing(index, reach, adds) => {
                let things = state.plan.things();
                let thing = &things[index.index(things.len())];
                let thing = state.plan.thing(thing).expect("it is there");
                Action::Press {
                    at: thing.middle(&state.plan).unwrap_or_default(),
                    reach: *reach,
                    adds: *adds,
                }
            }
            Self::DragTo(spot, off, reach) => Action::Drag {
                to: on(*spot, *off),
                reach: *reach,
            },
        }
    }
}

impl Spot {
    pub fn point(self, plan: &Plan) -> Point {
        let points = &plan.run.points;
        let before = |index: usize| match index.checked_sub(1) {
            None => plan.dryer.outlet(),
            Some(before) => points[before].position,
        };
        match self {
            Self::Corner(index) => points[index.index(points.len())].position,
            Self::MiddleOfLeg(index) => {
                let index = index.index(points.len());
                before(index).halfway(points[index].position)
            }
            Self::Outlet => plan.dryer.outlet(),
        }
    }
}

pub fn spot() -> impl Strategy<Value = Spot> {
    prop_oneof![
        4 => any::<prop::sample::Index>().prop_map(Spot::Corner),
        2 => any::<prop::sample::Index>().prop_map(Spot::MiddleOfLeg),
        1 => Just(Spot::Outlet),
    ]
}

/// A number in `usual`, or one that nobody means.
pub fn number(usual: Range<f64>) -> impl Strategy<Value = f64> {
    let silly = prop::sample::select(vec![
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::MAX,
        f64::MIN,
        f64::MIN_POSITIVE,
        5e-324,
        0.0,
        -0.0,
        -1.0,
        1e9,
        // At and just past the limit of a coordinate.
        500.0,
        500.000_001,
    ]);
    prop_oneof![8 => usual, 1 => silly]
}

pub fn length(usual: Range<f64>) -> impl Strategy<Value = Length> {
    number(usual).prop_map(Length::from_metres)
}

pub fn point() -> impl Strategy<Value = Point> {
    (number(-2.0..6.0), number(-2.0..6.0)).prop_map(|(x, y)| Point::new(x, y))
}

pub fn reach() -> impl Strategy<Value = f64> {
    number(0.0..0.3)
}

/// A node that a run of a few corners has, or none has.
fn node() -> impl Strategy<Value = NodeId> {
    let named = |names: &[&str]| {
        let ids = names.iter().map(|name| NodeId::Point((*name).into()));
        prop::sample::select(ids.collect::<Vec<_>>())
    };
    prop_oneof![
        12 => named(&["p1", "p2", "p3", "p4", "p5", "p6"]),
        1 => named(&["gone", "", "outlet", "p1 "]),
        1 => Just(NodeId::Outlet),
    ]
}

fn element() -> impl Strategy<Value = ElementId> {
    const PARTS: [Part; 9] = [
        Part::Leg,
        Part::Elbow,
        Part::Riser,
        Part::ElbowAfterRiser,
        Part::AreaChange,
        Part::Blockage,
        Part::ConcealedElbows,
        Part::Termination,
        Part::MakeUpAir,
    ];
    let part = prop::sample::select(PARTS.to_vec());
    (node(), part).prop_map(|(node, part)| ElementId { node, part })
}

fn any_elbow() -> impl Strategy<Value = Elbow> {
    const KINDS: [ElbowKind; 4] = [
        ElbowKind::Smooth,
        ElbowKind::Segmented,
        ElbowKind::SharpMitre,
        ElbowKind::BentFlexible,
    ];
    let odd = (prop::sample::select(KINDS.to_vec()), length(0.02..1.6))
        .prop_map(|(kind, radius)| Elbow { kind, radius });
    prop_oneof![elbow(), odd]
}

fn duct() -> impl Strategy<Value = Duct> {
    prop_oneof![
        Just(Duct::Rigid),
        number(-5.0..90.0).prop_map(|short_of_full_stretch_percent| Duct::SemiRigid {
            short_of_full_stretch_percent
        }),
        number(-5.0..90.0).prop_map(|short_of_full_stretch_percent| Duct::Foil {
            short_of_full_stretch_percent
        }),
        (length(0.01..1.1), length(0.01..1.1))
            .prop_map(|(width, depth)| Duct::FlatRectangular { width, depth }),
    ]
}

fn leg_state() -> impl Strategy<Value = LegState> {
    let estimate =
        (length(0.0..2.0), length(0.0..2.0)).prop_map(|(less, more)| Estimate { less, more });
    let insulation = prop_oneof![
        length(0.0..0.4).prop_map(Insulation::Thickness),
        number(0.0..11.0).prop_map(Insulation::Resistance),
    ];
    let concealed = (0..14_u8, 0..14_u8).prop_map(|(least, most)| ConcealedElbows { least, most });
    (
        prop::option::of(length(0.04..0.3)),
        prop::option::of(estimate),
        prop::option::of(concealed),
        prop::option::of(number(0.0..1.1)),
        prop::option::weighted(0.2, number(0.0..0.007)),
        any::<bool>(),
        prop::option::weighted(0.3, insulation),
        any::<bool>(),
    )
        .prop_map(
            |(
                diameter,
                estimate,
                concealed,
                blockage_free_area,
                leak_free_area_m2,
                in_box,
                insulation,
                aluminium,
            )| {
                LegState {
                    diameter,
                    estimate,
                    concealed,
                    blockage_free_area,
                    leak_free_area_m2,
                    ends_in_wall_box: in_box,
                    insulation,
                    metal: if aluminium {
                        Metal::Aluminium
                    } else {
                        Metal::Galvanized
                    },
                }
            },
        )
}

fn termination() -> impl Strategy<Value = Termination> {
    const KINDS: [TerminationKind; 4] = [
        TerminationKind::WallHood,
        TerminationKind::LouvredHood,
        TerminationKind::RoofCap,
        TerminationKind::OpenEnd,
    ];
    (prop::sample::select(KINDS.to_vec()), number(0.0..1.1))
        .prop_map(|(kind, free_area)| Termination { kind, free_area })
}

fn input() -> impl Strategy<Value = Input> {
    prop::sample::select(vec![
        Input::RigidRoughness,
        Input::SegmentedElbow,
        Input::WallHood,
        Input::FlapWeight,
        Input::BlowerExponent,
        Input::BlowerShutOffPressure,
    ])
}

fn value() -> impl Strategy<Value = Option<Override>> {
    let note = prop::sample::select(vec!["", "read on site", "\"<b>\n\u{0}\u{ffff}"]);
    let set = (input(), number(0.0..2.0), 0.0..1.0_f64, 0.0..1.0_f64, note);
    prop::option::of(set.prop_map(|(input, likely, less, more, note)| Override {
        input,
        low: likely - less * likely,
        likely,
        high: likely + more,
        note: note.to_owned(),
    }))
}

fn surroundings() -> impl Strategy<Value = Action> {
    let site = (
        length(-500.0..5100.0),
        number(-55.0..65.0),
        number(-0.1..1.1),
        number(-110.0..110.0),
        prop::option::of(number(0.0001..0.05)),
    );
    let site = site.prop_map(|(altitude, outdoors, humidity, house, area)| {
        Action::SetSite(Site {
            altitude,
            outdoor_temperature: Temperature::from_celsius(outdoors),
            outdoor_relative_humidity: humidity,
            house_pressure: Pressure::from_pascals(house),
            make_up_free_area_m2: area,
        })
    });
    let exhaust = (number(-25.0..105.0), number(-0.1..1.1)).prop_map(|(degrees, humidity)| {
        Action::SetExhaust(Exhaust {
            temperature: Temperature::from_celsius(degrees),
            relative_humidity: humidity,
            phase: Some(Phase::EndOfDrying),
            along_run: AlongRun::Cools,
        })
    });
    let stated = number(0.0..0.2).prop_map(|airflow| {
        Action::SetFlow(Flow::StatedAirflow {
            airflow: Airflow::from_cubic_metres_per_second(airflow),
        })
    });
    let named = (".{0,12}", ".{0,12}").prop_map(|(title, note)| Action::SetTitle { title, note });
    let handed = (".{0,12}", prop::collection::vec(length(-1.0..15.0), 0..10));
    let handed = handed.prop_map(|(remarks, stock_lengths)| {
        Action::SetHandover(Box::new(Handover {
            remarks,
            stock_lengths,
            ..Handover::default()
        }))
    });
    prop_oneof![
        site,
        exhaust,
        stated,
        named,
        handed,
        Just(Action::SetFlow(Flow::TypicalBlower {})),
    ]
}

/// A plan to open: drawn ones, and ones that no file could hold.
fn opened() -> impl Strategy<Value = Action> {
    let spoiled = |spoil: fn(&mut Plan)| {
        let mut plan = plan::blank("spoiled".to_owned());
        spoil(&mut plan);
        plan
    };
    let fixed = prop::sample::select(vec![
        plan::blank("blank".to_owned()),
        plan::example("a".to_owned(), "b".to_owned(), "c".to_owned()),
        spoiled(|plan| plan.run.points.clear()),
        spoiled(|plan| plan.run.points[0].position.x = f64::NAN),
        spoiled(|plan| plan.run.points[0].id = "a b".into()),
        spoiled(|plan| plan.run.diameter = Length::ZERO),
    ]);
    let plans = prop_oneof![4 => fixed, 1 => with_blower(), 1 => with_stated_airflow()];
    (plans, prop::bool::weighted(0.3)).prop_map(|(plan, changes_places)| {
        if changes_places {
            Action::Exchange(Arc::new(plan))
        } else {
            Action::Open(Box::new(plan))
        }
    })
}

/// The run and dryer of another plan, as a suggestion brings them.
fn rerouted() -> impl Strategy<Value = Action> {
    with_blower().prop_map(|plan| Action::TakeReroute(Box::new((plan.run, plan.dryer))))
}

fn gesture() -> impl Strategy<Value = Step> {
    let near = || (-0.05..0.05_f64, -0.05..0.05_f64);
    prop_oneof![
        6 => (spot(), near(), reach()).prop_map(|(spot, off, reach)| Step::PressOn(spot, off, reach)),
        2 => (point(), reach()).prop_map(|(at, reach)| Step::Plain(Action::Press { at, reach, adds: false })),
        10 => (point(), reach()).prop_map(|(to, reach)| Step::Plain(Action::Drag { to, reach })),
        3 => (spot(), near(), reach()).prop_map(|(spot, off, reach)| Step::DragTo(spot, off, reach)),
        3 => (node(), length(-3.0..3.0), length(0.0..0.05)).prop_map(|(node, rise, slack)| {
            Step::Plain(Action::DragRise { node, rise, slack })
        }),
        4 => Just(Step::Plain(Action::Release)),
        2 => Just(Step::Plain(Action::Cancel)),
    ]
}

fn looking() -> impl Strategy<Value = Action> {
    let units = prop::sample::select(vec![UnitSystem::UsCustomary, UnitSystem::Si]);
    let size = (number(0.0..2000.0), number(0.0..2000.0));
    let by = (number(-500.0..500.0), number(-500.0..500.0));
    let about = (
        number(-50.0..2000.0),
        number(-50.0..2000.0),
        number(0.1..8.0),
    );
    prop_oneof![
        prop::option::of(element()).prop_map(Action::Select),
        any::<bool>().prop_map(|forward| Action::SelectNeighbour { forward }),
        size.prop_map(|(width, height)| Action::Resize { width, height }),
        Just(Action::ShowAll),
        by.prop_map(|(right, down)| Action::Pan { right, down }),
        about.prop_map(|(x, y, factor)| Action::Zoom { x, y, factor }),
        units.prop_map(Action::SetUnits),
    ]
}

/// Any choice of code, with limits of a maker inside and outside what a plan holds.
fn code_choice() -> impl Strategy<Value = CodeChoice> {
    let sets = RULE_SETS.map(|set| set.id).to_vec();
    let seen = prop::collection::btree_set(
        prop::sample::select(vec![
            RuleTopic::NoScreen,
            RuleTopic::Joints,
            RuleTopic::Label,
        ]),
        0..3,
    );
    let limit = || prop::option::of(length(-1.0..120.0));
    let limits = (limit(), limit(), limit());
    (prop::sample::select(sets), any::<bool>(), limits, seen).prop_map(
        |(rule_set, path_through_fittings_counts, (length, at_45, at_90), seen_on_site)| {
            CodeChoice {
                rule_set,
                path_through_fittings_counts,
                maker: MakerLimits {
                    length,
                    at_45,
                    at_90,
                    back_pressure: length.map(|it| Pressure::from_pascals(it.metres() * 10.0)),
                },
                seen_on_site,
            }
        },
    )
}

/// Something done on site, sensible or not.
fn on_site() -> impl Strategy<Value = Action> {
    let reading = (number(-100.0..600.0), any::<bool>()).prop_map(|(pascals, heat)| {
        VisitChange::Add(Entry::Reading(Reading {
            at: plan::Spot::Outlet,
            measured: Measured::StaticPressure {
                pressure: Pressure::from_pascals(pascals),
                against: Against::Room,
                resolution: Pressure::from_pascals(1.0),
                tolerance: Pressure::from_pascals(2.0),
            },
            conditions: Conditions {
                heat,
                ..Conditions::PLAIN
            },
        }))
    });
    let look = element().prop_map(|at| {
        VisitChange::Add(Entry::Look(Look {
            at,
            found: Found::Clear,
        }))
    });
    let change = prop_oneof![
        1 => Just(VisitChange::Begin),
        2 => any::<bool>().prop_map(|is_done| VisitChange::Prepare {
            what: Preparation::GaugeZeroed,
            is_done,
        }),
        1 => any::<bool>().prop_map(VisitChange::AlwaysHeats),
        1 => Just(VisitChange::Note("<b>\u{0}".to_owned())),
        1 => Just(VisitChange::Date("March".to_owned())),
        4 => reading,
        2 => look,
        1 => Just(VisitChange::Add(Entry::Done(Done { what: Mended::WholeRun }))),
        2 => (0..3_usize).prop_map(VisitChange::Remove),
        1 => Just(VisitChange::AddPicture(VisitPicture {
            taken: Taken::Before,
            coding: PictureCoding::Jpeg,
            data_base64: "/9j/4AAQ".into(),
        })),
        1 => (0..2_usize).prop_map(VisitChange::RemovePicture),
        1 => value().prop_map(|set| VisitChange::FitBlower(set.into_iter().collect())),
    ];
    let visit = prop_oneof![
        6 => Just(None),
        1 => (1..4_u8).prop_map(|number| Some(format!("v{number}").into())),
    ];
    (visit, change).prop_map(|(visit, change)| Action::ChangeVisit {
        visit,
        change: Box::new(change),
    })
}

/// Any change of the plan in one step, undo and redo apart.
pub fn edit() -> impl Strategy<Value = Step> {
    let bend = (node(), prop::option::of(point()));
    let method = prop::sample::select(vec![
        BendMethod::Rennels,
        BendMethod::Miller,
        BendMethod::Ito,
        BendMethod::Idelchik,
    ]);
    let code = code_choice();
    prop_oneof![
        3 => (length(-0.5..0.5), length(-0.5..0.5))
            .prop_map(|(right, down)| Action::Nudge { right, down }),
        3 => bend.prop_map(|(leg, at)| Action::InsertBend { leg, at }),
        3 => node().prop_map(Action::DeleteBend),
        3 => (node(), length(-0.1..5.0))
            .prop_map(|(node, length)| Action::SetLegLength { node, length }),
        3 => (node(), prop_oneof![Just(Length::ZERO), length(-3.0..3.0)])
            .prop_map(|(node, rise)| Action::SetRise { node, rise }),
        3 => (element(), any_elbow())
            .prop_map(|(element, elbow)| Action::SetElbow { element, elbow }),
        3 => (node(), duct(), leg_state())
            .prop_map(|(node, duct, leg)| Action::SetLeg { node, duct, leg }),
        2 => termination().prop_map(Action::SetTermination),
        2 => (input(), value()).prop_map(|(input, value)| Action::SetOverride {
            // The value's own input is the one that counts where there is one.
            input: value.as_ref().map_or(input, |value| value.input),
            value,
        }),
        1 => method.prop_map(Action::SetBendMethod),
        2 => surroundings(),
        1 => code.prop_map(Action::SetCode),
        1 => opened(),
        2 => on_site(),
        1 => rerouted(),
    ]
    .prop_map(Step::Plain)
}

/// Any action at all, gestures and history among them.
pub fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        6 => gesture(),
        4 => edit(),
        6 => at_the_room(),
        2 => looking().prop_map(Step::Plain),
        2 => prop::sample::select(vec![Action::Undo, Action::Undo, Action::Redo])
            .prop_map(Step::Plain),
    ]
}

/// How many kinds of actions there are.
pub const KINDS: usize = 48;

/// The number of an action's kind: a new kind does not compile until it is counted, and should be
/// tried above as well.
pub fn kind(action: &Action) -> usize {
    match action {
        Action::Press { .. } => 0,
        Action::Drag { .. } => 1,
        Action::Release => 2,
        Action::Cancel => 3,
        Action::Select(_) => 4,
        Action::SelectNeighbour { .. } => 5,
        Action::Nudge { .. } => 6,
        Action::InsertBend { .. } => 7,
        Action::DeleteBend(_) => 8,
        Action::SetLegLength { .. } => 9,
        Action::SetRise { .. } => 10,
        Action::SetElbow { .. } => 11,
        Action::SetLeg { .. } => 12,
        Action::SetTermination(_) => 13,
        Action::SetOverride { .. } => 14,
        Action::SetBendMethod(_) => 15,
        Action::SetFlow(_) => 16,
        Action::SetSite(_) => 17,
        Action::SetExhaust(_) => 18,
        Action::SetCode(_) => 19,
        Action::SetUnits(_) => 20,
        Action::Open(_) => 21,
        Action::TakeReroute(_) => 45,
        Action::Undo => 22,
        Action::Redo => 23,
        Action::Resize { .. } => 24,
        Action::ShowAll => 25,
        Action::Pan { .. } => 26,
        Action::Zoom { .. } => 27,
        Action::Hover { .. } => 28,
        Action::TakeTool(_) => 29,
        Action::PutPoint => 30,
        Action::PutLength { .. } => 31,
        Action::FinishDrawing => 32,
        Action::SetHandover(_) => 33,
        Action::SelectNextThing { .. } => 34,
        Action::SelectAll => 35,
        Action::Remove => 36,
        Action::Copy => 37,
        Action::Turn(_) => 38,
        Action::SetThing(_) => 39,
        Action::SetPicture(_) => 40,
        Action::SetCeiling(_) => 41,
        Action::DragRise { .. } => 42,
        Action::KeepThings => 43,
        Action::ChangeVisit { .. } => 44,
        Action::SetTitle { .. } => 46,
        Action::Exchange(_) => 47,
    }
}
