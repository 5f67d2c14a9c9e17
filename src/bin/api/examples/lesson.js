// The plan of the file with its sharp corners rounded, handed to the second view as an object.

const plan = await (await fetch('house.json')).json();
plan.title = 'The same run with smooth elbows';
for (const point of plan.run.points) point.elbow = { kind: 'smooth', centre_line_radius_m: 0.1524 };
document.querySelector('#changed').plan = plan;
