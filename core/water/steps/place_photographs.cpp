// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/place_photographs.h"

#include "core/gdal/photograph.h"
#include "core/logbook/stays_about.h"

#include <algorithm>
#include <set>

namespace water {

namespace {

using logbook::Fish;
using logbook::Stay;
using Is = PlacedPhotograph::Is;
using std::chrono::milliseconds;

constexpr auto ofTheFish = std::chrono::minutes(10);

/// A path that holds on another machine too, where the whole folder is handed on.
std::string keptPath(const std::filesystem::path& file, const std::filesystem::path& folder) {
    if (folder.empty()) {
        return file.generic_string();
    }
    std::error_code fault;
    const auto within = std::filesystem::proximate(file, folder, fault).generic_string();
    return fault || within.empty() || within.starts_with("..") ? file.generic_string() : within;
}

class Places {
public:
    explicit Places(const Water& water) : water_(water) {}

    void place(PlacedPhotograph& photograph) {
        if (!photograph.time) {
            return;
        }
        const Stay* stay = stayOf(photograph);
        if (stay == nullptr) {
            photograph.is = Is::elsewhere;
            return;
        }
        photograph.stay = stay->id;
        const bool isKnown = stay->photograph == photograph.path ||
                             std::ranges::any_of(stay->runs, [&](const Fish& run) {
                                 return run.photograph == photograph.path;
                             });
        if (isKnown) {
            photograph.is = Is::known;
        } else if (const Fish* fish = fishOf(*stay, *photograph.time)) {
            photograph.fish = fish->id;
            photograph.is = Is::ofFish;
            fishTaken_.insert(fish->id);
        } else {
            const bool isFree = stay->photograph.empty() && staysTaken_.insert(stay->id).second;
            photograph.is = isFree ? Is::ofStay : Is::taken;
        }
    }

private:
    [[nodiscard]] const Stay* stayOf(const PlacedPhotograph& photograph) const {
        const units::Moment time = *photograph.time;
        const Stay* best = nullptr;
        double best_m = 0.0;
        for (const std::size_t at :
             logbook::staysAbout(water_.log, time - logbook::roughTime, time)) {
            const Stay& stay = water_.log[at];
            if (time < stay.start || time > stay.end + logbook::roughTime) {
                continue;
            }
            const double off_m = distance_m(stay, photograph);
            if (best == nullptr || off_m < best_m || (off_m == best_m && time <= stay.end)) {
                best = &stay;
                best_m = off_m;
            }
        }
        return best;
    }

    /// 0 where nobody can say.
    [[nodiscard]] double distance_m(const Stay& stay, const PlacedPhotograph& photograph) const {
        return water_.frame && photograph.place
                   ? geo::distance_m(water_.frame->toWater(stay.place),
                                     water_.frame->toWater(*photograph.place))
                   : 0.0;
    }

    /// The nearest in time that has no photograph yet.
    [[nodiscard]] const Fish* fishOf(const Stay& stay, units::Moment time) const {
        const Fish* best = nullptr;
        milliseconds least = ofTheFish;
        for (const Fish& run : stay.runs) {
            const bool isFree =
                run.landed && run.photograph.empty() && !fishTaken_.contains(run.id);
            if (isFree && run.time && std::chrono::abs(time - *run.time) <= least) {
                best = &run;
                least = std::chrono::abs(time - *run.time);
            }
        }
        return best;
    }

    const Water& water_;
    std::set<logbook::StayId> staysTaken_;
    std::set<logbook::FishId> fishTaken_;
};

} // namespace

base::Result<std::vector<PlacedPhotograph>>
placePhotographs(const Water& water, const std::vector<std::filesystem::path>& files,
                 const std::filesystem::path& folder, base::Progress& progress) {
    progress.begin("looking at photographs");
    std::vector<PlacedPhotograph> photographs;
    for (const std::filesystem::path& file : files) {
        if (progress.stopAsked()) {
            return std::unexpected(base::cancelled());
        }
        progress.tell(static_cast<double>(photographs.size()) / static_cast<double>(files.size()));
        const auto read = gdal::readPhotograph(file, water.clock);
        if (!read) {
            return std::unexpected(read.error());
        }
        PlacedPhotograph one;
        one.path = keptPath(file, folder);
        one.time = read->time;
        one.place = read->place;
        photographs.push_back(std::move(one));
    }
    std::ranges::stable_sort(photographs, {}, &PlacedPhotograph::time);
    Places places(water);
    for (PlacedPhotograph& photograph : photographs) {
        places.place(photograph);
    }
    return photographs;
}

} // namespace water
