// SPDX-License-Identifier: GPL-3.0-or-later
// Every threshold of the faults: what lies at it stays, what lies just beyond it is set aside, for
// its own reason.
#include "core/reduction/depth_faults.h"
#include "core/reduction/position_faults.h"
#include "core/reduction/series_looks.h"
#include "core/reduction/set_aside_disagreeing.h"
#include "core/reduction/set_aside_outside_shore.h"
#include "tests/core/reduction/survey_builder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace reduction {

namespace {

using soundings::Verdict;

/// A letter for each sounding: '.' kept, 's' spike, 'e' double echo, 'd' drop-out, 'j' position
/// jump, 'p' stuck position, 'f' stuck figure, 'l' on land, 'x' disagrees, 'h' by hand.
std::string lettersOf(const std::vector<Verdict>& verdicts) {
    std::string text;
    for (const Verdict verdict : verdicts) {
        text += std::string(".dsefjplxh").at(static_cast<std::size_t>(verdict));
    }
    return text;
}

using Depths = std::vector<double>;

TrackSeries seriesEvery(double step_m, const Depths& depths_m) {
    TrackSeries series;
    for (std::size_t i = 0; i < depths_m.size(); ++i) {
        series.index.push_back(i);
        series.along_m.push_back(step_m * static_cast<double>(i));
        series.shown_m.push_back(depths_m[i]);
    }
    return series;
}

using Find = void (*)(const TrackSeries&, const AlongTrackSettings&, std::vector<Verdict>&);

std::string found(Find find, const TrackSeries& series, const AlongTrackSettings& settings = {}) {
    std::vector<Verdict> verdicts(series.size(), Verdict::kept);
    find(series, settings, verdicts);
    return lettersOf(verdicts);
}

/// `count` soundings of `usual_m` with `odd` in their middle.
Depths flatWith(double usual_m, std::size_t count, const Depths& odd) {
    Depths depths_m(count, usual_m);
    depths_m.insert(depths_m.begin() + static_cast<std::ptrdiff_t>(count / 2), odd.begin(),
                    odd.end());
    return depths_m;
}

std::string middleMarked(std::size_t count, std::size_t odd, char letter) {
    std::string text(count, '.');
    text.insert(count / 2, odd, letter);
    return text;
}

const std::string none20 = std::string(20, '.');

TEST(SpikeLimit, IsFiveTimesTheFloorOfItsDepth) {
    // Floor 0.10 m + 2 % of what is shown: shallower than 10 m by more than 5 x (0.1 + 0.02 x).
    // 10 - x = 0.5 + 0.1 x, so at 8.636 m; deeper: x - 10 = 0.5 + 0.1 x, at 11.667 m.
    const auto at = [](double odd_m, double step_m) {
        return found(findSpikes, seriesEvery(step_m, flatWith(10.0, 20, {odd_m})));
    };
    EXPECT_EQ(at(8.65, 0.5), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(8.62, 0.5), middleMarked(20, 1, 's'));
    EXPECT_EQ(at(11.65, 0.5), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(11.68, 0.5), middleMarked(20, 1, 's'));
    // Two metres from its neighbours a bottom may do more: half of that limit, and one metre in
    // two. 10 - x = 0.25 + 0.05 x + 1, at 8.333 m.
    EXPECT_EQ(at(8.35, 2.0), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(8.31, 2.0), middleMarked(20, 1, 's'));
}

TEST(SpikeLimit, FollowsItsSettings) {
    const auto at = [](double odd_m, const AlongTrackSettings& settings) {
        return found(findSpikes, seriesEvery(2.0, flatWith(10.0, 20, {odd_m})), settings);
    };
    AlongTrackSettings settings;
    settings.threshold = 10.0; // 10 - x = 1 + 0.2 x at 7.5 m.
    EXPECT_EQ(at(7.55, settings), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(7.45, settings), middleMarked(20, 1, 's'));
    settings = {};
    settings.floor_m = 0.3; // 10 - x = 1.5 + 0.1 x at 7.727 m.
    EXPECT_EQ(at(7.75, settings), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(7.70, settings), middleMarked(20, 1, 's'));
    settings = {};
    settings.floorShare = 0.0; // 0.5 m, and 0.5 m less for the two metres to each neighbour:
    settings.steepest = 0.3;   // 0.25 + 0.3 m.
    EXPECT_EQ(at(9.47, settings), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(9.43, settings), middleMarked(20, 1, 's'));
    settings.steepest = 1.0; // Half of five floors, and half a metre for each metre of way: 1.25 m.
    EXPECT_EQ(at(8.80, settings), middleMarked(20, 1, '.'));
    EXPECT_EQ(at(8.70, settings), middleMarked(20, 1, 's'));
}

TEST(SpikeLimit, NeedsBothNeighboursAgainstItAndFiveSoundings) {
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, {5, 5, 5, 5, 5, 9, 9, 9, 9, 9})), "..........");
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, {5, 5, 9, 5})), "....");
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, {5, 5, 9, 5, 5})), "..s..");
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, {9, 5, 5, 5, 5, 5, 5})), "s......");
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, {5, 5, 5, 5, 5, 5, 1})), "......s");
    // On an even slope nothing stands out but what leaves it.
    Depths slope;
    for (int i = 0; i < 20; ++i) {
        slope.push_back(3.0 + 0.6 * i);
    }
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, slope)), none20);
    slope[10] -= 4.0;
    EXPECT_EQ(found(findSpikes, seriesEvery(2.0, slope)), "..........s.........");
}

TEST(EchoLimit, SetsAsideWhatJoinsTheBottomOnceItIsHalved) {
    const auto at = [](double odd_m, std::size_t count) {
        return found(findEchoFaults, seriesEvery(2.0, flatWith(5.0, 40, Depths(count, odd_m))));
    };
    EXPECT_EQ(at(10.0, 1), middleMarked(40, 1, 'e'));
    EXPECT_EQ(at(10.0, 9), middleMarked(40, 9, 'e'));
    EXPECT_EQ(at(10.0, 38), middleMarked(40, 38, 'e'));
    // Halved it must join 5 m within half of five floors: 2.5 x (0.1 + 0.1) = 0.5 m.
    EXPECT_EQ(at(10.95, 9), middleMarked(40, 9, 'e'));
    EXPECT_EQ(at(11.05, 9), middleMarked(40, 9, 's')); // No echo, but a wall up and down.
    EXPECT_EQ(at(9.05, 9), middleMarked(40, 9, 'e'));
    EXPECT_EQ(at(8.95, 9), middleMarked(40, 9, 's'));
}

TEST(EchoLimit, TakesALongStretchOfTwiceTheDepthInShallowWaterForAGully) {
    // Nine soundings and more have to be higher than five floors: at d metres 5 (0.1 + 0.02 d).
    const auto at = [](double usual_m, std::size_t count) {
        return found(findEchoFaults,
                     seriesEvery(2.0, flatWith(usual_m, 40, Depths(count, 2.0 * usual_m))));
    };
    EXPECT_EQ(at(0.54, 9), middleMarked(40, 9, '.'));
    EXPECT_EQ(at(0.54, 8), middleMarked(40, 8, 'e'));
    EXPECT_EQ(at(0.57, 9), middleMarked(40, 9, 'e'));
}

TEST(SpikeRun, OfUpToThreeStandsOutByFiveFloors) {
    // At 5 m up to 5 x 0.2 = 1 m.
    const auto at = [](double odd_m, std::size_t count) {
        return found(findEchoFaults, seriesEvery(2.0, flatWith(5.0, 20, Depths(count, odd_m))));
    };
    EXPECT_EQ(at(3.98, 3), middleMarked(20, 3, 's'));
    EXPECT_EQ(at(4.02, 3), middleMarked(20, 3, '.'));
    EXPECT_EQ(at(6.02, 2), middleMarked(20, 2, 's'));
    EXPECT_EQ(at(5.98, 2), middleMarked(20, 2, '.'));
    // Four need walls: a step steeper than one in one, and a metre more, so above 3 m here.
    EXPECT_EQ(at(1.95, 4), middleMarked(20, 4, 's'));
    EXPECT_EQ(at(2.05, 4), middleMarked(20, 4, '.'));
}

TEST(FaultRun, EndsAtItsLongest) {
    const auto echoes = [](std::size_t count, double step_m, double longest_m) {
        AlongTrackSettings settings;
        settings.longestFault_m = longest_m;
        return found(findEchoFaults, seriesEvery(step_m, flatWith(5.0, 40, Depths(count, 10.0))),
                     settings);
    };
    EXPECT_EQ(echoes(40, 1.0, 120.0), middleMarked(40, 40, 'e'));
    EXPECT_EQ(echoes(41, 1.0, 120.0), middleMarked(40, 41, '.'));
    EXPECT_EQ(echoes(11, 2.0, 20.0), middleMarked(40, 11, 'e'));
    EXPECT_EQ(echoes(12, 2.0, 20.0), middleMarked(40, 12, '.'));
}

TEST(StuckFigure, NeedsTwelveSoundingsOver25MetresAndAJumpBehind) {
    const auto at = [](std::size_t count, double step_m, double after_m) {
        Depths depths_m;
        for (int i = 0; i < 20; ++i) {
            depths_m.push_back(i % 2 == 0 ? 4.9 : 5.1);
        }
        depths_m.insert(depths_m.end(), count, 6.0);
        depths_m.insert(depths_m.end(), 10, after_m);
        const std::string text = found(findStuckDepths, seriesEvery(step_m, depths_m));
        return static_cast<std::size_t>(std::ranges::count(text, 'f'));
    };
    EXPECT_EQ(at(12, 2.5, 8.0), 11U); // The first is true.
    EXPECT_EQ(at(11, 2.5, 8.0), 0U);
    EXPECT_EQ(at(13, 2.1, 8.0), 12U); // 25.2 m
    EXPECT_EQ(at(13, 2.05, 8.0), 0U); // 24.6 m
    // Half of five floors: 2.5 x (0.10 + 0.12) = 0.55 m.
    EXPECT_EQ(at(20, 2.5, 6.6), 19U);
    EXPECT_EQ(at(20, 2.5, 6.5), 0U);
    EXPECT_EQ(at(20, 2.5, 5.4), 19U);
    EXPECT_EQ(at(20, 2.5, 5.5), 0U);
}

TEST(StuckFigure, AtTheEndOfAPassTellsNothing) {
    Depths depths_m(20, 5.0);
    depths_m.resize(60, 6.0);
    EXPECT_EQ(found(findStuckDepths, seriesEvery(2.5, depths_m)).find('f', 20), std::string::npos);
}

ReducedDay cleaned(const soundings::SurveyDay& day) {
    base::Progress progress;
    return setAsideAlongTrack({day}, MadeUpDay::reduced({day}), {}, progress).value().days[0];
}

soundings::SurveyDay levelDay(std::size_t count, double depth_m) {
    return MadeUpDay::along({0, 0}, {2.0 * static_cast<double>(count - 1), 0}, count,
                            [depth_m](geo::WaterPoint) { return depth_m; });
}

TEST(DropOut, IsAtFiveCentimetresAndBelow350Metres) {
    for (const auto& [depth_m, isOne] : {std::pair{0.05, true}, {0.051, false}, {0.0, true}}) {
        soundings::SurveyDay day = levelDay(30, 0.3);
        day.soundings.edit()[9].shown = units::Depth::metres(depth_m);
        EXPECT_EQ(cleaned(day).verdicts[9] == Verdict::dropOut, isOne) << depth_m;
    }
    for (const auto& [depth_m, isOne] : {std::pair{350.0, false}, {350.1, true}}) {
        soundings::SurveyDay day = levelDay(30, 349.0);
        day.soundings.edit()[9].shown = units::Depth::metres(depth_m);
        EXPECT_EQ(cleaned(day).verdicts[9] == Verdict::dropOut, isOne) << depth_m;
    }
}

void move(soundings::SurveyDay& day, std::size_t i, double dx_m, double dy_m) {
    const geo::WaterFrame frame = MadeUpDay::frame();
    geo::WaterPoint p = frame.toWater(day.soundings[i].place);
    p.x_m += dx_m;
    p.y_m += dy_m;
    day.soundings.edit()[i].place = frame.toEarth(p);
}

TEST(PositionJump, IsFartherThanTheBoatCanHaveGone) {
    const auto at = [](double aside_m, std::chrono::seconds step) {
        soundings::SurveyDay day = levelDay(40, 5.0);
        for (std::size_t i = 0; i < 40; ++i) {
            *day.soundings.edit()[i].time = *day.soundings[0].time + static_cast<long>(i) * step;
        }
        move(day, 20, 0.0, aside_m);
        return cleaned(day).verdicts[20] == Verdict::positionJump;
    };
    using std::chrono::seconds;
    // A second at thrice the usual 2 m/s, and 20 m of noise: 26 m, two of them along the track.
    EXPECT_FALSE(at(25.88, seconds(1)));
    EXPECT_TRUE(at(25.96, seconds(1)));
    EXPECT_FALSE(at(-25.88, seconds(1)));
    // In three seconds the boat may go 36 m: no break at all.
    EXPECT_FALSE(at(35.8, seconds(3)));
    EXPECT_TRUE(at(36.1, seconds(3)));
}

TEST(PositionJump, OfThirtySoundingsAndMoreIsAGap) {
    const auto jumped = [](std::size_t count) {
        soundings::SurveyDay day = levelDay(100, 5.0);
        for (std::size_t i = 20; i < 20 + count; ++i) {
            move(day, i, 0.0, 400.0);
        }
        const ReducedDay clean = cleaned(day);
        return static_cast<std::size_t>(std::ranges::count(clean.verdicts, Verdict::positionJump));
    };
    // Left out it costs its soundings; kept, two ways that cannot have been sailed, 15 each.
    EXPECT_EQ(jumped(10), 10U);
    EXPECT_EQ(jumped(29), 29U);
    EXPECT_EQ(jumped(31), 0U);
}

TEST(StuckPosition, NeedsSixSoundingsAndSixFloorsOfDepth) {
    // The deepest at 5 m: 6 x (0.10 + 0.10) = 1.2 m.
    const auto stuck = [](std::size_t count, double shallowest_m) {
        soundings::SurveyDay day =
            MadeUpDay::along({0, 0}, {78, 0}, 40, [](geo::WaterPoint) { return 5.0; });
        for (std::size_t i = 10; i < 10 + count; ++i) {
            day.soundings.edit()[i].place = day.soundings[10].place;
            const double share = static_cast<double>(i - 10) / static_cast<double>(count - 1);
            day.soundings.edit()[i].shown =
                units::Depth::metres(std::lerp(5.0, shallowest_m, share));
        }
        std::vector<bool> isHeld(40, false);
        ReducedDay reduced = MadeUpDay::reduced({day}).days[0];
        markStuckPositions(day, {}, isHeld, reduced);
        return lettersOf(reduced.verdicts).substr(9, count + 2);
    };
    EXPECT_EQ(stuck(6, 3.75), "..ppppp.");
    EXPECT_EQ(stuck(5, 3.75), ".......");
    EXPECT_EQ(stuck(6, 3.85), "........");
}

/// Three passes 4 m beside one another, the middle one off by `off_m`.
std::string middleOf(double depth_m, double off_m, double slope, double side_m = 4.0,
                     const DisagreeingSettings& settings = {}, double third_m = 0.0) {
    std::vector<soundings::SurveyDay> days;
    for (const double y_m : {0.0, side_m, 2.0 * side_m}) {
        days.push_back(MadeUpDay::along({0, y_m}, {40, y_m}, 21, [&](geo::WaterPoint p) {
            return depth_m + slope * (p.x_m - 20.0) + (y_m == side_m ? off_m : 0.0) +
                   (y_m > side_m ? third_m : 0.0);
        }));
    }
    base::Progress progress;
    const auto survey = setAsideDisagreeing(days, MadeUpDay::reduced(days), settings, progress);
    EXPECT_EQ(survey->days[0].verdicts, std::vector<Verdict>(21, Verdict::kept));
    EXPECT_EQ(survey->days[2].verdicts, std::vector<Verdict>(21, Verdict::kept));
    return lettersOf({survey->days[1].verdicts[10]});
}

TEST(DisagreeingLimit, IsFiveFloorsOfTheOthersDepthAndWhatPlaceExplains) {
    // 5 x (0.15 m + 1.5 % of 10 m) = 1.5 m, either way.
    EXPECT_EQ(middleOf(10.0, 1.49, 0.0), ".");
    EXPECT_EQ(middleOf(10.0, 1.51, 0.0), "x");
    EXPECT_EQ(middleOf(10.0, -1.49, 0.0), ".");
    EXPECT_EQ(middleOf(10.0, -1.51, 0.0), "x");
    // On a bottom of 1 in 10: 1.5 x 0.1 x (4 m + 3 m) = 1.05 m more.
    EXPECT_EQ(middleOf(10.0, 2.54, 0.1), ".");
    EXPECT_EQ(middleOf(10.0, 2.56, 0.1), "x");
    // Neighbours lie up to 10 m off: with the third pass at 10 m there are two, beyond but none.
    EXPECT_EQ(middleOf(10.0, 3.0, 0.0, 9.99), "x");
    EXPECT_EQ(middleOf(10.0, 3.0, 0.0, 10.01), ".");
    // The others have to agree within half of it.
    EXPECT_EQ(middleOf(10.0, 3.0, 0.0, 4.0, {}, 1.01), "."); // 1.01 m of 1.99 m
    EXPECT_EQ(middleOf(10.0, 3.0, 0.0, 4.0, {}, 0.99), "x"); // 0.99 m of 2.01 m
}

TEST(DisagreeingLimit, FollowsItsSettings) {
    DisagreeingSettings settings;
    settings.threshold = 10.0;
    EXPECT_EQ(middleOf(10.0, 2.99, 0.0, 4.0, settings), ".");
    EXPECT_EQ(middleOf(10.0, 3.01, 0.0, 4.0, settings), "x");
    settings = {};
    settings.floor_m = 0.25; // 5 x 0.40 m
    EXPECT_EQ(middleOf(10.0, 1.99, 0.0, 4.0, settings), ".");
    EXPECT_EQ(middleOf(10.0, 2.01, 0.0, 4.0, settings), "x");
    settings = {};
    settings.floorShare = 0.03; // 5 x 0.45 m
    EXPECT_EQ(middleOf(10.0, 2.24, 0.0, 4.0, settings), ".");
    EXPECT_EQ(middleOf(10.0, 2.26, 0.0, 4.0, settings), "x");
    settings = {};
    settings.positionError_m = 6.0; // 1.5 x 0.1 x 10 m
    EXPECT_EQ(middleOf(10.0, 2.99, 0.1, 4.0, settings), ".");
    EXPECT_EQ(middleOf(10.0, 3.01, 0.1, 4.0, settings), "x");
    settings = {};
    settings.near_m = 3.0;
    EXPECT_EQ(middleOf(10.0, 5.0, 0.0, 4.0, settings), ".");
}

} // namespace

} // namespace reduction
