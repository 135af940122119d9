// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/problems.h"

#include "core/anchoring/landing.h"
#include "core/geo/outline.h"
#include "core/marks/propose_settings.h"
#include "core/marks/rank_marks.h"
#include "core/marks/winds_of_day.h"
#include "core/rods/rod_settings.h"
#include "core/water/steps/banned_places.h"
#include "core/water/steps/closed_cells.h"
#include "core/water/steps/lie_at.h"
#include "core/water/steps/plan_day.h"

#include <algorithm>

#include <fmt/format.h>

namespace water {

namespace {

using Problems = std::vector<std::string>;

void add(Problems& problems, std::string_view of, std::string_view problem) {
    std::string sentence = fmt::format("{}: {}", of, problem);
    if (std::ranges::find(problems, sentence) == problems.end()) {
        problems.push_back(std::move(sentence));
    }
}

void add(Problems& problems, std::string_view of, const std::vector<std::string>& wanted) {
    for (const std::string& each : wanted) {
        add(problems, of, "what can be worked with is " + each);
    }
}

void askTackle(const marks::Plan& plan, Problems& problems) {
    constexpr std::string_view tackle = "boat and rods of the plan";
    for (const marks::WindOfHours& part : marks::windsOf(plan.day)) {
        anchoring::Weather weather;
        weather.windSpeed = part.wind.speed;
        if (const auto fine = anchoring::checkSettings(boatOf(plan.tackle), weather); !fine) {
            add(problems, tackle, fine.error().what);
        }
    }
    add(problems, tackle, rods::problemsIn(rodsOf(plan.tackle)));
    if (!(plan.tackle.boatSpeed.inMetresPerSecond() >= 0.1)) {
        add(problems, tackle, "the boat would never arrive");
    }
}

void askPlan(const marks::Plan& plan, Problems& problems) {
    askTackle(plan, problems);
    add(problems, "the plan", marks::problemsIn(marks::ProposeSettings(), plan));
    add(problems, "the plan", marks::problemsIn(marks::RankSettings(), plan));
    if (plan.day.end < plan.day.start) {
        add(problems, "the plan", "the day ends before it starts");
    }
}

/// Soundings that all lie on land draw nothing; a water without any is only young.
bool areAllOutside(const Water& water, const geo::Outline& outline) {
    bool areAny = false;
    for (const soundings::SurveyDay& day : water.days) {
        for (const soundings::Sounding& sounding : day.soundings) {
            areAny = true;
            if (outline.contains(water.frame->toWater(sounding.place))) {
                return false;
            }
        }
    }
    return areAny;
}

void askPlaces(const Water& water, Problems& problems) {
    if (const auto banned = BannedPlaces::of(water); !banned) {
        add(problems, banned.error().where, banned.error().what);
    }
    const grid::GridFrame oneCell(0.0, 0.0, 1.0, 1, 1);
    if (const auto closed = closedCells(water, oneCell); !closed) {
        add(problems, closed.error().where, closed.error().what);
    }
    if (water.shoreline.empty()) {
        return;
    }
    const auto outline = geo::Outline::make(water.shoreline, *water.frame);
    if (!outline) {
        add(problems, "the shoreline", outline.error().what);
        return;
    }
    if (areAllOutside(water, *outline)) {
        add(problems, "the soundings", "all of them lie outside the shore");
    }
    if (const auto& launch = water.plan.launch) {
        if (ashore(*water.frame, *outline, *launch) > farthestLaunch) {
            add(problems, "the plan", "the launch lies far from this water");
        }
    }
}

} // namespace

std::vector<std::string> problemsIn(const Water& water) {
    Problems problems;
    askPlan(water.plan, problems);
    if (water.frame) {
        askPlaces(water, problems);
    }
    return problems;
}

} // namespace water
