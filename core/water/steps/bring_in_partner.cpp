// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/bring_in_partner.h"

#include "core/water/steps/check_plausible.h"
#include "core/water/steps/sort_stays.h"

#include <algorithm>
#include <bit>
#include <unordered_set>

namespace water {

using base::Progress;
using base::Result;
using soundings::Sounding;
using soundings::SurveyDay;

namespace {

/// Of two files of one day the fewest soundings that both have, for it to be one day; our choice.
constexpr double mixedFrom = 0.02;

/// When, where and how deep: what no two soundings have in common.
std::uint64_t markOf(const Sounding& sounding) {
    constexpr std::uint64_t mixer = 0x9E3779B97F4A7C15U;
    std::uint64_t mark = 0;
    const auto take = [&mark](std::uint64_t word) {
        mark = (std::rotl(mark, 23) ^ word) * mixer;
        mark ^= mark >> 29U;
    };
    take(std::bit_cast<std::uint64_t>(sounding.place.lon_deg));
    take(std::bit_cast<std::uint64_t>(sounding.place.lat_deg));
    take(std::bit_cast<std::uint64_t>(sounding.shown.inMetres()));
    if (sounding.time) {
        take(static_cast<std::uint64_t>(sounding.time->time_since_epoch().count()));
    }
    return mark;
}

/// The soundings that a water has, to be asked about a day more.
class KnownSoundings {
public:
    explicit KnownSoundings(const Water& water) {
        for (const SurveyDay& day : water.days) {
            take(day);
        }
    }
    void take(const SurveyDay& day) {
        for (const Sounding& sounding : day.soundings) {
            marks_.insert(markOf(sounding));
        }
    }
    [[nodiscard]] double knownShare(const SurveyDay& day) const {
        const auto known = std::ranges::count_if(day.soundings, [this](const Sounding& sounding) {
            return marks_.contains(markOf(sounding));
        });
        return day.soundings.empty()
                   ? 1.0
                   : static_cast<double>(known) / static_cast<double>(day.soundings.size());
    }

private:
    std::unordered_set<std::uint64_t> marks_;
};

Result<void> sortDays(const Water& water, const Water& other, const std::string& where,
                      std::int64_t& next, PartnerBroughtIn& brought, Progress& progress) {
    KnownSoundings known(water);
    for (const SurveyDay& day : other.days) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        if (auto plausible = checkPlausible(water, day, where); !plausible) {
            return plausible;
        }
        const double share = known.knownShare(day);
        if (share >= 1.0) {
            ++brought.knownDays;
        } else if (share > mixedFrom) {
            brought.mixedDays.push_back(day.name);
        } else {
            known.take(day);
            brought.days.push_back(day);
            brought.days.back().id = soundings::SurveyDayId(next++);
        }
    }
    return {};
}

/// On the gauge, the bed stays where it is.
void sortLeadLine(const Water& water, const Water& other, std::int64_t& next,
                  PartnerBroughtIn& brought) {
    constexpr double sameDepth_m = 0.005;
    for (soundings::LeadLineSounding sounding : other.leadLine) {
        sounding.depth = water.chartLevel - (other.chartLevel - sounding.depth);
        const bool isKnown =
            std::ranges::any_of(water.leadLine, [&](const soundings::LeadLineSounding& one) {
                return one.place == sounding.place && one.bottom == sounding.bottom &&
                       std::abs(one.depth.inMetres() - sounding.depth.inMetres()) < sameDepth_m;
            });
        if (!isKnown) {
            sounding.id = soundings::LeadLineId(next++);
            brought.leadLine.push_back(sounding);
        }
    }
}

void sortWeed(const Water& water, const Water& other, std::int64_t& next,
              PartnerBroughtIn& brought) {
    for (weed::WeedNote note : other.weedNotes) {
        const bool isKnown = std::ranges::any_of(water.weedNotes, [&](const weed::WeedNote& one) {
            return one.place == note.place && one.growth == note.growth &&
                   one.height == note.height && one.seen == note.seen &&
                   one.extent == note.extent && one.corners == note.corners;
        });
        if (!isKnown) {
            note.id = weed::WeedNoteId(next++);
            brought.weedNotes.push_back(note);
        }
    }
}

} // namespace

Result<PartnerBroughtIn> bringInPartner(const Water& water, const Water& other,
                                        const PartnerSettings& settings, const std::string& where,
                                        Progress& progress) {
    if (other.log.empty() && other.days.empty() && other.leadLine.empty() &&
        other.weedNotes.empty()) {
        return base::fail(base::ErrorKind::unusableInput,
                          "it holds neither soundings nor a log to bring in", where,
                          "give a water file that somebody else has used");
    }
    if (!other.shoreline.empty()) {
        const std::vector<geo::LonLatPiece> shore(other.shoreline.begin(), other.shoreline.end());
        if (auto plausible = checkShorePlausible(water, shore, where); !plausible) {
            return std::unexpected(plausible.error());
        }
    }
    progress.begin("comparing the two waters");
    PartnerBroughtIn brought;
    brought.chartLevelAbove = other.chartLevel - water.chartLevel;
    std::int64_t next = std::max(freshId(water), freshId(other));
    if (auto sorted = sortDays(water, other, where, next, brought, progress); !sorted) {
        return std::unexpected(sorted.error());
    }
    sortLeadLine(water, other, next, brought);
    sortWeed(water, other, next, brought);
    logbook::Log log = other.log.copied();
    for (logbook::Stay& stay : log) {
        stay.who = stay.who.empty() ? settings.who : stay.who;
    }
    auto sorted = sortStays(water, std::move(log), settings.sharing, next, progress);
    if (!sorted) {
        return std::unexpected(sorted.error());
    }
    brought.log = std::move(*sorted);
    return brought;
}

} // namespace water
