// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/surface/propose_lines.h"

#include "core/surface/solver/line_candidates.h"
#include "core/surface/solver/trip_order.h"

#include <algorithm>
#include <cmath>

namespace surface {

namespace {

constexpr double farthestLaunch_m = 200.0;
constexpr int mostMisfits = 6;

/// The launch, moved to the middle of the nearest block of water where it lies on land.
std::optional<geo::WaterPoint> launchOnWater(const solver::GainMap& map, geo::WaterPoint launch) {
    if (map.mask().isActive(map.mask().frame().cellOf(launch))) {
        return launch;
    }
    const auto nearest = std::min_element(
        map.blocks().begin(), map.blocks().end(),
        [&](const solver::GainMap::Block& a, const solver::GainMap::Block& b) {
            return geo::distance_m(a.middle, launch) < geo::distance_m(b.middle, launch);
        });
    if (nearest == map.blocks().end() ||
        geo::distance_m(nearest->middle, launch) > farthestLaunch_m) {
        return std::nullopt;
    }
    return nearest->middle;
}

solver::BestStretch bestOf(const std::vector<solver::Chord>& chords, const solver::GainMap& map,
                           const solver::RoundTrip& trip, const LineSettings& settings,
                           double longest_m) {
    solver::BestStretch best;
    for (const solver::Chord& chord : chords) {
        const solver::BestStretch stretch = solver::bestStretchOf(
            chord, map, trip.wayTo_m(), settings.shortest.inMetres(), longest_m);
        if (stretch.worth_m2 > best.worth_m2) {
            best = stretch;
        }
    }
    return best;
}

SurveyTrip tripOf(const solver::RoundTrip& round, const LineSettings& settings,
                  solver::GainMap map) {
    SurveyTrip trip;
    trip.meanHalfWidthBefore = units::Length::metres(map.meanHalfWidth_m());
    for (const solver::Chord& chord : round.inOrder()) {
        SurveyLine line;
        line.start = chord.start;
        line.end = chord.end;
        line.length = geo::distance(chord.start, chord.end);
        line.gain_m3 = map.gainOf_m3(chord.start, chord.end);
        line.duration = std::chrono::seconds(
            std::llround(line.length.inMetres() / settings.speed.inMetresPerSecond()));
        line.gainPerMetre_m2 = line.gain_m3 / line.length.inMetres();
        map.take(chord.start, chord.end);
        trip.lines.push_back(line);
    }
    trip.distance = units::Length::metres(round.length_m());
    trip.duration =
        std::chrono::seconds(std::llround(round.length_m() / settings.speed.inMetresPerSecond()));
    trip.meanHalfWidthAfter = units::Length::metres(map.meanHalfWidth_m());
    return trip;
}

} // namespace

std::vector<std::string> problemsIn(const LineSettings& settings) {
    std::vector<std::string> problems;
    const auto expect = [&problems](bool isWell, const char* sentence) {
        if (!isWell) {
            problems.emplace_back(sentence);
        }
    };
    const double speed = settings.speed.inMetresPerSecond();
    const double shortest_m = settings.shortest.inMetres();
    const double off_m = settings.offShore.inMetres();
    expect(settings.time >= std::chrono::minutes(5) && settings.time <= std::chrono::hours(24),
           "the time must be 5 minutes to 24 hours");
    expect(speed >= 0.2 && speed <= 5.0, "the speed must be 0.2 to 5 m/s");
    expect(shortest_m >= 10.0 && shortest_m <= 5000.0, "the shortest line must be 10 to 5000 m");
    expect(settings.mostLines >= 1 && settings.mostLines <= 100,
           "there must be 1 to 100 lines at most");
    expect(off_m >= 0.0 && off_m <= 200.0, "lines must keep 0 to 200 m off the shore");
    expect(std::isfinite(settings.launch.x_m) && std::isfinite(settings.launch.y_m),
           "the launch must be a place");
    return problems;
}

base::Result<SurveyTrip> proposeLines(const DrawnWater& drawn, const geo::Outline& outline,
                                      const grid::Grid<float>& worth, const LineSettings& settings,
                                      base::Progress& progress) {
    if (const std::vector<std::string> problems = problemsIn(settings); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, problems.front(), "lines to sound",
                          "choose a value in its range");
    }
    const solver::GainMap before(drawn, outline, worth);
    const std::optional<geo::WaterPoint> launch = launchOnWater(before, settings.launch);
    if (!launch) {
        return base::fail(base::ErrorKind::unusableInput,
                          "the launch lies farther than 200 m from the water", "launch",
                          "put the launch on the shore");
    }
    const double apart_m = std::clamp(std::sqrt(outline.area().inSquareMetres()) / 60.0, 8.0, 40.0);
    const std::vector<solver::Chord> chords = solver::chordsOf(
        outline, drawn.depth, apart_m, settings.offShore.inMetres(), settings.shortest.inMetres());
    solver::GainMap map = before;
    solver::RoundTrip round(map.mask(), *launch);
    const double budget_m = settings.speed.inMetresPerSecond() *
                            static_cast<double>(std::chrono::seconds(settings.time).count());
    double longest_m = budget_m;
    int misfits = 0;
    int lines = 0;
    while (lines < settings.mostLines && misfits < mostMisfits) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        const solver::BestStretch best = bestOf(chords, map, round, settings, longest_m);
        if (!(best.worth_m2 > 0.0)) {
            break;
        }
        round.add({best.start, best.end});
        if (round.length_m() > budget_m) {
            round.undo();
            ++misfits;
            longest_m = 0.6 * std::min(longest_m, geo::distance_m(best.start, best.end));
            continue;
        }
        map.take(best.start, best.end);
        ++lines;
        longest_m = budget_m - round.length_m();
        progress.tell(round.length_m() / budget_m);
    }
    if (lines == 0) {
        return base::fail(base::ErrorKind::unusableInput,
                          "no line fits into this water and this time", "lines to sound",
                          "give more time, or allow shorter lines");
    }
    return tripOf(round, settings, before);
}

} // namespace surface
