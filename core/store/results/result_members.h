// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/results/result_cells.h"
#include "core/water/document/derived.h"

namespace store {

/// What each result consists of, said once for writing and reading. Every struct is taken apart by
/// name: a member that is added does not compile until it is kept, or said here to be made anew.
/// Whoever changes anything here raises `resultLayout` in keep_results.cpp.
template <class Archive>
class ResultMembers : public ResultCells<Archive> {
    template <class T>
    using Of = typename Archive::template Of<T>;
    using Parts = ResultCells<Archive>;

public:
    using Parts::Parts;
    using Parts::take;

    void take(Of<water::CheckedSurvey>& checked) {
        auto& [survey, kept, crossings, check, differences, tie, delays, setAside_s] = checked;
        static_cast<void>(kept); // Made anew of the soundings and their verdicts.
        all(survey.days, crossings, check, differences, tie, delays, setAside_s);
    }
    void take(Of<water::WaterForm>& form) {
        auto& [rise, waterLeft, contours, bandPolygons, bandMeasures, hypsography] = form;
        all(rise, waterLeft, contours, bandPolygons, bandMeasures, hypsography);
    }
    void take(Of<structure::ZoneMap>& map) {
        auto& [zones, zoneOfCell, report] = map;
        all(zones, zoneOfCell, report);
    }
    void take(Of<sections::SectionMap>& map) {
        auto& [sections, sectionOfCell, partsBefore, report, refused] = map;
        all(sections, sectionOfCell, partsBefore, report, refused);
    }

private:
    template <class... Ts>
    void all(Ts&... values) {
        (take(values), ...);
    }
    template <Optional T>
    void take(T& value) {
        bool isThere = value.has_value();
        take(isThere);
        if constexpr (Archive::isReading) {
            value.reset();
            if (isThere) {
                value.emplace();
            }
        }
        if (value) {
            take(*value);
        }
    }
    /// Each item takes at least a count or a quantity.
    template <List T>
        requires(!OneOf<T, std::string, std::vector<double>, std::vector<geo::WaterPoint>,
                        std::vector<bool>>)
    void take(T& list) {
        if constexpr (requires(std::remove_const_t<T>& other) { other.resize(0); }) {
            this->size(list, sizeof(double));
        }
        for (auto& item : list) {
            take(item);
        }
    }

    // The survey.
    void take(Of<reduction::ReducedDay>& day) {
        auto& [points, depth_m, verdicts] = day;
        all(points, depth_m);
        if constexpr (Archive::isReading) {
            verdicts.resize(depth_m.size());
        }
        this->takeRuns(verdicts);
    }
    void take(Of<reduction::Crossing>& crossing) {
        auto& [at, depthA_m, depthB_m, dayA, dayB, soundingA, soundingB, shareA, shareB] = crossing;
        all(at, depthA_m, depthB_m, dayA, dayB, soundingA, soundingB, shareA, shareB);
    }
    void take(Of<reduction::CrossingCheck>& check) {
        auto& [count, mean_m, rms_m, p95_m, withinOrder1b, withinOrder2] = check;
        all(count, mean_m, rms_m, p95_m, withinOrder1b, withinOrder2);
    }
    void take(Of<reduction::DayDifference>& between) {
        auto& [dayA, dayB, difference, crossings] = between;
        all(dayA, dayB, difference, crossings);
    }
    void take(Of<reduction::DayTie>& tie) {
        auto& [offsets, errors, isHeld, isTied, crossings, before, after] = tie;
        all(offsets, errors, isHeld, isTied, crossings, before, after);
    }
    void take(Of<reduction::PositionDelay>& delay) {
        auto& [isKnown, delay_s, error_s, crossings, before_m, after_m] = delay;
        all(isKnown, delay_s, error_s, crossings, before_m, after_m);
    }

    // The form.
    void take(Of<geo::Piece>& piece) {
        auto& [outer, islands] = piece;
        all(outer, islands);
    }
    void take(Of<contours::Contour>& contour) {
        auto& [depth, line, closed] = contour;
        all(depth, line, closed);
    }
    void take(Of<contours::BandPolygons>& band) {
        auto& [from, to, pieces] = band;
        all(from, to, pieces);
    }
    void take(Of<contours::BandMeasure>& band) {
        auto& [from, to, area, volume] = band;
        all(from, to, area, volume);
    }
    void take(Of<surface::Hypsography>& form) {
        auto& [rise, area, volume, meanDepth, maxDepth, shore, shoreDevelopment, volumeDevelopment,
               steps] = form;
        all(rise, area, volume, meanDepth, maxDepth, shore, shoreDevelopment, volumeDevelopment,
            steps);
    }
    void take(Of<surface::HypsographyStep>& step) {
        auto& [depth, area, below] = step;
        all(depth, area, below);
    }

    // Zones and sections.
    void take(Of<structure::Zone>& zone) {
        auto& [kind, name, cells, pieces, middle, shallowest, deepest, area, topEdges, feet,
               shoreTops, edgeLength, meanTrust_m] = zone;
        all(kind, name);
        this->takeCells(cells);
        all(pieces, middle, shallowest, deepest, area, topEdges, feet, shoreTops, edgeLength,
            meanTrust_m);
    }
    void take(Of<structure::StructureReport>& report) {
        auto& [from_percent, downTo_percent, gentle_percent, highGround, fine, broad, leastArea,
               joined] = report;
        all(from_percent, downTo_percent, gentle_percent, highGround, fine, broad, leastArea,
            joined);
    }
    void take(Of<sections::Section>& section) {
        auto& [number, name, cells, pieces, middle, spine, area, meanDepth, maxDepth, shore,
               dropOff, weedShare, trustShare, bandShare, fromLaunch] = section;
        all(number, name);
        this->takeCells(cells);
        all(pieces, middle, spine, area, meanDepth, maxDepth, shore, dropOff, weedShare, trustShare,
            bandShare, fromLaunch);
    }
    void take(Of<sections::DivisionReport>& report) {
        auto& [depthWeight, compactness, straightCompactness, explained, straightExplained] =
            report;
        all(depthWeight, compactness, straightCompactness, explained, straightExplained);
    }
    void take(Of<sections::ChangeRefused>& refused) {
        auto& [change, why] = refused;
        auto& [kind, what, where, whatToDo] = why;
        all(change, kind, what, where, whatToDo);
    }
};

} // namespace store
