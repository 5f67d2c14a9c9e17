//! The likely places of a fault on the drawing: the likelier, the wider and heavier its ring, and its
//! letter is its rank. Source: what the guide says of them.

use crate::site_readings::house;
use elbowroom::plan::ElementId;
use elbowroom::scene::{Mark, Shape, Text, suspect_marks};
use elbowroom::system::CompiledRun;

/// Radius, line and weight of a ring.
fn ring(mark: &Mark) -> (f64, f64, f64) {
    let Shape::Circle { radius, .. } = mark.shape else {
        panic!("{mark:?}")
    };
    (radius.metres(), mark.width.metres(), mark.weight)
}

#[test]
fn the_likelier_place_has_the_wider_and_heavier_ring() {
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    let odds = [0.6, 0.3, 0.05];
    let places = run.elements.iter().map(|element| element.id.clone());
    let suspects: Vec<(ElementId, f64)> = places.zip(odds).collect();
    let marks = suspect_marks(&plan, &suspects);
    assert_eq!(marks.len(), 2 * suspects.len());
    for (rank, pair) in marks.chunks(2).enumerate() {
        let Shape::Text { text, .. } = &pair[1].shape else {
            panic!("{:?}", pair[1])
        };
        assert_eq!(*text, Text::Suspect(rank));
        if let Some(likelier) = rank.checked_sub(1).map(|before| ring(&marks[2 * before])) {
            let own = ring(&pair[0]);
            assert!(likelier.0 > own.0, "{likelier:?} {own:?}");
            assert!(likelier.1 > own.1, "{likelier:?} {own:?}");
            assert!(likelier.2 > own.2, "{likelier:?} {own:?}");
        }
    }
}
