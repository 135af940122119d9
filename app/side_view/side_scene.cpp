// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/side_view/side_scene.h"

#include "app/chart/placed_things.h"
#include "app/chart/read_out.h"
#include "core/water/document/chosen_scale.h"

#include <algorithm>

namespace side_view {

namespace {

constexpr double fishWithin_m = 15.0;
constexpr double beyondCast_m = 8.0; // behind the boat, and past the bait
constexpr double beyond_m = 25.0;    // past the anchors: about where the farthest baits lie

std::vector<SideFish> fishAlong(const chart::ChartContent& content, const Cut& cut) {
    std::vector<SideFish> fish;
    if (!content.water) {
        return fish;
    }
    const auto take = [&](const logbook::Stay& stay, geo::WaterPoint place) {
        const auto along = stay.runs.empty() ? std::nullopt : cut.alongOf(place, fishWithin_m);
        if (!along) {
            return;
        }
        for (const logbook::Fish& run : stay.runs) {
            SideFish seen{*along, {}, run.landed};
            if (run.baitDepth) {
                seen.depth_m = run.baitDepth->inMetres();
            }
            fish.push_back(seen);
        }
    };
    chart::PlacedThings::forStays(content.water, take);
    return fish;
}

} // namespace

SideScene sceneAlong(const chart::ChartContent& content, const geo::Path& path) {
    SideScene scene;
    scene.cut = makeCut(content.derived, path, chart::riseOf(content));
    scene.words = content.words;
    scene.inks = content.inks;
    if (content.water) {
        scene.bands = water::bandsOf(*content.water, content.derived);
    }
    scene.fish = fishAlong(content, scene.cut);
    return scene;
}

SideScene sceneOfMark(const chart::ChartContent& content, const marks::Mark& mark,
                      std::optional<std::size_t> rod) {
    const bool isCast = rod && *rod < mark.spread.rods.size();
    SideScene scene =
        sceneAlong(content, isCast ? pathOfCast(mark, *rod, units::Length::metres(beyondCast_m))
                                   : pathThrough(mark, units::Length::metres(beyond_m)));
    scene.mark = mark;
    scene.rod = isCast ? rod : std::nullopt;
    if (content.planned) {
        scene.tackle = content.planned->plan.tackle;
    }
    return scene;
}

SideScene sceneOfMark(const chart::ChartContent& content, int rank,
                      std::optional<std::size_t> rod) {
    if (!content.planned) {
        return {};
    }
    const auto& marks = content.planned->marks;
    const auto mark = std::ranges::find(marks, rank, &marks::Mark::rank);
    return mark == marks.end() ? SideScene() : sceneOfMark(content, *mark, rod);
}

SideFrame frameOf(const SideScene& scene, const QRectF& box) {
    return SideFrame::showing(box, scene.cut.length_m(), scene.cut.deepest_m(),
                              scene.mark ? 1.6 : 0.4);
}

} // namespace side_view
