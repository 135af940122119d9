// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/anchoring/place_anchors.h"
#include "core/marks/propose_marks.h"
#include "core/marks/rank_marks.h"
#include "core/rods/spread_rods.h"
#include "core/wind/fetch.h"
#include "core/wind/waves.h"
#include "tests/support/made_up_zones.h"

#include <cmath>
#include <functional>

namespace support {

/// A water with everything that marks are made from, all by formula, turned about the origin by
/// `turn_deg` (a multiple of 90) as a whole. An uneven basin of 700 by 500 m with a long slanting
/// drop-off from 3 to 11 m, a hump in the deep, weed on the shelf, and closed water in a corner.
class MadeUpDay {
public:
    explicit MadeUpDay(double turn_deg = 0.0, double cell_m = 4.0)
        : turn_deg_(turn_deg), water(madeUpWater({{turned(shore(), turn_deg), {}}},
                                                 turned(Bottom(bottomAt), turn_deg), cell_m)),
          zones(structureOfIt()), weed(weedOfIt()), closed(closedOfIt()), isGuess(guessOfIt()),
          trust_m(trustOfIt()), sections(sectionsOfIt()),
          ground(water.depth, bands.limit(), &closed, zones, weed) {
        plan.day.wind = {units::Bearing::degrees(235.0 - turn_deg),
                         units::Speed::metresPerSecond(5.0)};
    }

    MadeUpDay(const MadeUpDay&) = delete; // Its ground refers to it.
    MadeUpDay& operator=(const MadeUpDay&) = delete;

    [[nodiscard]] marks::MarkInput input() const {
        return {.frame = water.frame,
                .outline = water.outline,
                .ground = ground,
                .bands = bands,
                .sections = sections,
                .trust_m = trust_m,
                .isGuess = &isGuess,
                .learned = learned ? &*learned : nullptr,
                .waveHeightAt = waveHeightAt,
                .bannedAt = bannedAt};
    }

    /// Back to where the place lies on the water before it was turned.
    [[nodiscard]] geo::WaterPoint unturned(geo::WaterPoint p) const {
        return turned(geo::Ring{p}, -turn_deg_).front();
    }

    /// The candidate with anchors, rods and waves; nothing where no anchors hold.
    [[nodiscard]] std::optional<marks::WorkedCandidate>
    workedOut(const marks::Candidate& candidate) const {
        base::Progress progress;
        const auto& [from, speed] = plan.day.wind;
        const wind::Fetch fetch = wind::fetchAt(water.outline, candidate.place, from.value());
        const wind::Waves waves = wind::wavesOnDeepWater(speed.value(), fetch.effective);
        const auto anchors =
            anchoring::placeAnchors(water.depth, &closed, candidate.place,
                                    {from.value(), speed, waves.significantHeight}, {}, progress);
        if (!anchors) {
            return std::nullopt;
        }
        const auto spread = rods::spreadRods(ground, *anchors, {}, progress);
        return marks::WorkedCandidate{candidate, *anchors, spread.value(),
                                      marks::WaveState{fetch.effective, waves.significantHeight}};
    }

    [[nodiscard]] std::vector<marks::Candidate> proposed() const {
        base::Progress progress;
        marks::ProposeSettings settings;
        settings.most = 80;
        return marks::proposeMarks(input(), plan, pinned, settings, progress).value();
    }

    [[nodiscard]] std::vector<marks::WorkedCandidate> worked() const {
        std::vector<marks::WorkedCandidate> all;
        for (const marks::Candidate& candidate : proposed()) {
            if (auto one = workedOut(candidate)) {
                all.push_back(std::move(*one));
            }
        }
        return all;
    }

    [[nodiscard]] std::vector<marks::Mark> ranked(std::vector<marks::WorkedCandidate> candidates,
                                                  const marks::RankSettings& settings = {}) const {
        base::Progress progress;
        return marks::rankMarks(input(), plan, std::move(candidates), settings, progress).value();
    }

    [[nodiscard]] static geo::Ring shore() {
        return {{-341, -231}, {-101, -263}, {339, -243}, {351, -38},
                {301, 61},    {263, 247},   {-119, 233}, {-333, 141}};
    }
    /// Metres along the way down the drop-off, 0 on its middle.
    [[nodiscard]] static double down_m(geo::WaterPoint p) {
        return 0.8 * p.x_m + 0.6 * p.y_m - 21.0;
    }
    [[nodiscard]] static double hump_m(geo::WaterPoint p) {
        return std::hypot(p.x_m - 171.0, p.y_m - 57.0);
    }
    [[nodiscard]] static double bottomAt(geo::WaterPoint p) {
        const double hump = hump_m(p) / 26.0;
        return 3.0 + 8.0 / (1.0 + std::exp(-down_m(p) / 9.0)) + 0.0021 * p.x_m -
               6.0 * std::exp(-0.5 * hump * hump);
    }

private:
    double turn_deg_;

    [[nodiscard]] Belongs where(Belongs belongs) const {
        return [this, belongs = std::move(belongs)](geo::WaterPoint p) {
            return belongs(unturned(p));
        };
    }
    /// The line where down_m() is `off_m`, inside the basin, in steps of some 10 m.
    [[nodiscard]] geo::Path edgeAt(double off_m) const {
        geo::Path edge;
        for (double along_m = -190.0; along_m <= 160.0; along_m += 10.0) {
            const double d = 21.0 + off_m;
            edge.push_back({0.8 * d - 0.6 * along_m, 0.6 * d + 0.8 * along_m});
        }
        return turned(edge, turn_deg_);
    }
    [[nodiscard]] structure::ZoneMap structureOfIt() const {
        structure::ZoneMap map = noZones(water);
        addZone(map, water, structure::ZoneKind::dropOff,
                where([](geo::WaterPoint p) { return std::fabs(down_m(p)) < 15.0; }),
                {edgeAt(-13.0)});
        addZone(map, water, structure::ZoneKind::hump,
                where([](geo::WaterPoint p) { return hump_m(p) < 24.0; }));
        map.zones.back().middle = turned(geo::Ring{{171.0, 57.0}}, turn_deg_).front();
        addZone(map, water, structure::ZoneKind::shelf,
                where([](geo::WaterPoint p) { return down_m(p) <= -15.0; }));
        return map;
    }
    [[nodiscard]] structure::ZoneMap weedOfIt() const {
        structure::ZoneMap map = noZones(water);
        addZone(map, water, structure::ZoneKind::weedBed,
                where([](geo::WaterPoint p) { return down_m(p) < -120.0; }));
        addZone(map, water, structure::ZoneKind::weedEdge,
                where([](geo::WaterPoint p) { return down_m(p) >= -120.0 && down_m(p) < -112.0; }),
                {edgeAt(-120.0)});
        return map;
    }
    [[nodiscard]] grid::Grid<std::uint8_t> cellsWhere(const Belongs& belongs) const {
        grid::Grid<std::uint8_t> map(water.depth.frame(), 0);
        for (std::size_t i = 0; i < map.size(); ++i) {
            map[i] = belongs(unturned(map.frame().centre(map.frame().cellAt(i)))) ? 1 : 0;
        }
        return map;
    }
    [[nodiscard]] grid::Grid<std::uint8_t> closedOfIt() const {
        return cellsWhere([](geo::WaterPoint p) { return p.x_m < -180.0 && p.y_m > 62.0; });
    }
    [[nodiscard]] grid::Grid<std::uint8_t> guessOfIt() const {
        return cellsWhere([](geo::WaterPoint p) { return p.y_m < -141.0; });
    }
    [[nodiscard]] grid::Grid<float> trustOfIt() const {
        grid::Grid<float> map(water.depth.frame(), NAN);
        for (std::size_t i = 0; i < map.size(); ++i) {
            if (water.depth.has(i)) {
                const geo::WaterPoint p = unturned(map.frame().centre(map.frame().cellAt(i)));
                map[i] = static_cast<float>(p.y_m < -141.0 ? 1.3 : 0.2 + 0.0003 * (p.x_m + 400.0));
            }
        }
        return map;
    }
    /// Four sections: the quarters of the basin.
    [[nodiscard]] sections::SectionMap sectionsOfIt() const {
        sections::SectionMap map;
        map.sectionOfCell =
            grid::Grid<sections::SectionNumber>(water.depth.frame(), sections::noSection);
        for (const char* name : {"Quarter 1", "Quarter 2", "Quarter 3", "Quarter 4"}) {
            sections::Section section;
            section.name = name;
            map.sections.push_back(std::move(section));
        }
        for (std::size_t i = 0; i < map.sectionOfCell.size(); ++i) {
            const grid::GridFrame& frame = map.sectionOfCell.frame();
            if (water.depth.has(i)) {
                const geo::WaterPoint p = unturned(frame.centre(frame.cellAt(i)));
                map.sectionOfCell[i] = (p.x_m > 0.0 ? 1 : 0) + (p.y_m > 0.0 ? 2 : 0);
            }
        }
        return map;
    }

public:
    MadeUpWater water;
    contours::Bands bands;
    structure::ZoneMap zones;
    structure::ZoneMap weed;
    grid::Grid<std::uint8_t> closed;
    grid::Grid<std::uint8_t> isGuess;
    grid::Grid<float> trust_m;
    sections::SectionMap sections;
    rods::Ground ground;
    marks::Plan plan;
    std::vector<marks::Candidate> pinned;
    std::optional<marks::LearnedCatch> learned;
    std::function<units::Length(geo::WaterPoint)> waveHeightAt;
    std::function<const std::string*(geo::WaterPoint)> bannedAt;
};

} // namespace support
