// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/chance.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sample {

/// What was true on a survey day. Depth as shown = (depth below chart level + level - draft) x
/// assumed / true sound speed.
struct DayFacts {
    std::string date;
    std::string file;
    std::int64_t start_s = 0; ///< first fix, seconds since 1970 UTC
    double level_m =
        0.0; ///< above chart level; always known here, though the angler may not have read it
    bool levelRead = true;
    double waterTemperature_c = 0.0;
    double draft_m = 0.0;
    double assumedSoundSpeed_m_s = 1500.0;
    double boatSpeed_m_s = 2.0;
    double unit_m = 1.0; ///< length of the unit that the sounder shows, in metres
    int everySeconds = 1;
};

/// Sound speed in fresh water, m/s, by Marczak 1997 (J. Acoust. Soc. Am. 102, 2776), 0 to 95 C.
double soundSpeed_m_s(double temperature_c);

enum class Fault {
    none,
    spike,
    zeroDepth,
    noDepth,
    stuck,
    positionJump,
    doubleEcho,
    badChecksum,
    truncated,
    voidFix
};

std::string nameOf(Fault fault);

/// One line of a sounder's log.
struct Fix {
    std::int64_t time_s = 0;
    Point truly;
    Point shownAt;
    double depth_m = 0.0;        ///< true, below chart level
    std::optional<double> shown; ///< in the sounder's unit, not yet rounded to a tenth
    double speed_m_s = 0.0;
    double course_deg = 0.0;
    bool afterGap = false;
    Fault fault = Fault::none;
    int event = 0; ///< faults that belong together share a number; 0 for none
};

/// A shown depth, rounded to the tenth that the sounder displays, brought back to metres below
/// chart level.
double reducedDepth_m(double shown, const DayFacts& facts);

/// Sails the way and logs it: wander of the helm, drifting position error of 1.5 m, depth noise of
/// 0.05 m + 0.5 %, two stops, and one stretch that was not recorded.
std::vector<Fix> sail(const Line& way, const Bottom& bottom, const DayFacts& facts, Chance& chance);

/// How many faults of each kind to put in (events; most last several fixes).
struct FaultWish {
    int spikes = 0;
    int zeroDepths = 0;
    int noDepths = 0;
    int stuck = 0;
    int positionJumps = 0;
    int doubleEchoes = 0;
    int badChecksums = 0;
    int truncated = 0;
    int voidFixes = 0;
};

void putFaultsIn(std::vector<Fix>& fixes, const FaultWish& wish, const DayFacts& facts,
                 Chance& chance);

} // namespace sample
