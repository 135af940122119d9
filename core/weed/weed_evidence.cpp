// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weed/weed_evidence.h"

#include "core/weed/note_places.h"

namespace weed {

namespace {

constexpr double thinSaysWeed = 0.8;
constexpr double cleanLeadWeight = 0.5;
constexpr double thinHeight = 0.25; // of the usual height

Finding findingOf(const WeedNote& note, geo::WaterPoint place, double depth_m, double weight,
                  double usualHeight_m) {
    Finding f{place, depth_m, 0.0, weight, std::nullopt};
    if (note.growth == Growth::none) {
        return f;
    }
    const bool isThin = note.growth == Growth::thin;
    f.weed = isThin ? thinSaysWeed : 1.0;
    f.height_m =
        note.height ? note.height->inMetres() : usualHeight_m * (isThin ? thinHeight : 1.0);
    return f;
}

} // namespace

Evidence gathered(std::span<const WeedNote> notes,
                  std::span<const soundings::LeadLineSounding> leadLine,
                  const geo::WaterFrame& frame, const grid::DepthGrid& depth, double usualHeight_m,
                  std::optional<std::chrono::year> year) {
    Evidence out;
    for (const WeedNote& note : notes) {
        const double weight = worthOf(note, year);
        const std::size_t before = out.findings.size();
        const std::vector<geo::WaterPoint> places = placesOf(note, frame);
        for (const geo::WaterPoint place : places) {
            if (const auto here = depth.at(place)) {
                Finding found = findingOf(note, place, here->inMetres(), weight, usualHeight_m);
                found.shareOfNote = 1.0 / static_cast<double>(places.size());
                out.findings.push_back(found);
            }
        }
        const bool isUsed = out.findings.size() > before;
        out.notesUsed += isUsed ? 1 : 0;
        out.notesOutside += isUsed ? 0 : 1;
        out.notesFaded += isUsed && weight < 1.0 ? 1 : 0;
    }
    for (const soundings::LeadLineSounding& lead : leadLine) {
        const geo::WaterPoint place = frame.toWater(lead.place);
        const auto here = depth.at(place);
        if (!lead.bottom || !here) {
            continue;
        }
        const bool isWeed = *lead.bottom == soundings::Bottom::weed;
        out.findings.push_back({place, here->inMetres(), isWeed ? 1.0 : 0.0,
                                isWeed ? 1.0 : cleanLeadWeight, std::nullopt});
    }
    return out;
}

} // namespace weed
