// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"

#include "app/chart/verdict_now.h"

namespace days {

using chart::LayerKind;

namespace {

/// Marks of two plans nearer than this are the same place.
constexpr double samePlace_m = 15.0;

/// The mark of the new plan that is where the chosen one of the old plan was; without one, the
/// best.
std::optional<int> markStillThere(const chart::ChartContent& before, const water::PlannedDay* now) {
    if (now == nullptr || now->marks.empty()) {
        return std::nullopt;
    }
    if (before.planned && before.selectedMark) {
        for (const marks::Mark& old : before.planned->marks) {
            for (const marks::Mark& mark : now->marks) {
                if (old.rank == *before.selectedMark &&
                    geo::distance_m(old.place, mark.place) < samePlace_m) {
                    return mark.rank;
                }
            }
        }
    }
    return now->marks.front().rank;
}

/// The section of the new map that lies where the chosen one of the old map has its middle.
std::optional<int> sectionStillThere(const chart::ChartContent& before,
                                     const sections::SectionMap* now) {
    const auto& old = before.derived.sections;
    const int chosen = before.selectedSection.value_or(-1);
    if (!old || now == nullptr || chosen < 0 ||
        static_cast<std::size_t>(chosen) >= old->sections.size()) {
        return std::nullopt;
    }
    const sections::SectionNumber there =
        sections::sectionAt(*now, old->sections[static_cast<std::size_t>(chosen)].middle);
    return there == sections::noSection ? std::nullopt : std::optional(there);
}

/// Whether the sounding is one of those that were looked over.
bool isSounding(const chart::ChartContent& content, chart::SoundingPick pick) {
    if (!chart::isLookedOver(content)) {
        return false;
    }
    const auto day = static_cast<std::size_t>(pick.day);
    const auto& reduced = content.derived.checked->survey.days;
    return day < reduced.size() && pick.sounding < reduced[day].points.size();
}

/// Of `choice`, what the act would change: nothing is set aside twice. Nothing at all where the
/// days are no longer those that were looked over.
water::SoundingChoice changeable(const chart::ChartContent& content, water::SoundingChoice choice,
                                 side_view::BrushAct act) {
    if (!chart::isLookedOver(content)) {
        return {};
    }
    for (std::size_t d = 0; d < choice.size(); ++d) {
        const auto verdicts = chart::verdictsNow(content, d);
        std::erase_if(choice[d], [&](std::size_t i) {
            return (verdicts[i] == soundings::Verdict::kept) !=
                   (act == side_view::BrushAct::setAside);
        });
    }
    return choice;
}

} // namespace

ChartLink::ChartLink(open_water::OpenWater& open, preferences::Preferences& preferences,
                     QObject* parent)
    : QObject(parent), open_(open), preferences_(preferences) {
    content_.shown = {chart::allLayerKinds.begin(), chart::allLayerKinds.end()};
    for (const LayerKind kind : {LayerKind::soundings, LayerKind::crossings, LayerKind::nextLines,
                                 LayerKind::marks, LayerKind::log}) {
        content_.shown.erase(kind);
    }
    connect(&open_, &open_water::OpenWater::opened, this, [this] {
        content_.nextLines.reset();
        content_.dayTrack.reset();
        content_.sectionRates.reset();
        content_.selectedMark.reset();
        content_.selectedSection.reset();
        content_.selectedZone.reset();
        content_.selectedStay.reset();
        chooseSounding(std::nullopt, false);
        takeFromOpenWater();
    });
    connect(&open_, &open_water::OpenWater::changed, this, &ChartLink::takeFromOpenWater);
    connect(&open_, &open_water::OpenWater::derivedChanged, this, &ChartLink::takeFromOpenWater);
    connect(&open_, &open_water::OpenWater::plannedChanged, this, &ChartLink::takeFromOpenWater);
    connect(&preferences_, &preferences::Preferences::unitsChanged, this,
            &ChartLink::takeFromOpenWater);
    connect(&open_.jobs(), &jobs::JobRunner::finished, this, &ChartLink::takeAge);
    connect(&open_.jobs(), &jobs::JobRunner::started, this, &ChartLink::takeAge);
    takeFromOpenWater();
}

void ChartLink::takeFromOpenWater() {
    const water::Derived& derived = open_.derived();
    // Numbers of zones and sections mean the same only in the same map.
    if (derived.sections != content_.derived.sections) {
        content_.selectedSection = sectionStillThere(content_, derived.sections.get());
    }
    if (derived.structure != content_.derived.structure || derived.weed != content_.derived.weed) {
        content_.selectedZone.reset();
    }
    if (open_.planned() != content_.planned) {
        content_.selectedMark = markStillThere(content_, open_.planned().get());
    }
    const bool areOtherCrossings = derived.checked != content_.derived.checked;
    content_.water = open_.water();
    content_.derived = derived;
    content_.planned = open_.planned();
    content_.age = ageNow();
    content_.words = wording::Words(preferences_.units());
    if (sounding_ && !isSounding(content_, *sounding_)) {
        chooseSounding(std::nullopt, false);
    }
    if (areOtherCrossings) {
        chooseCrossing(std::nullopt, false); // Its number means another one by now.
    }
    emit contentChanged();
}

chart::ContentAge ChartLink::ageNow() const {
    chart::ContentAge age;
    age.isMapOld = open_.derived().drawn && !open_.isCurrent(water::Step::draw);
    age.isPlanOld = open_.planned() && !open_.isPlanCurrent();
    age.isBeingMadeAnew = (age.isMapOld || age.isPlanOld) && open_.isBeingMade();
    return age;
}

void ChartLink::takeAge() {
    const chart::ContentAge age = ageNow();
    if (age != content_.age) {
        content_.age = age;
        emit contentChanged();
    }
}

void ChartLink::setShown(LayerKind kind, bool isShown) {
    const bool hasChanged =
        isShown ? content_.shown.insert(kind).second : content_.shown.erase(kind) > 0;
    if (hasChanged) {
        emit contentChanged();
    }
}

void ChartLink::ask(const QString& prompt, chart::ToolKind tool) {
    prompt_ = prompt;
    tool_ = tool;
    take_ = nullptr;
    takeRing_ = nullptr;
    takeLine_ = nullptr;
    brush_.reset();
    takeSoundings_ = nullptr;
    takeShore_ = nullptr;
}

void ChartLink::askPlaces(const QString& prompt, std::function<bool(geo::WaterPoint)> take) {
    ask(prompt, chart::ToolKind::note);
    take_ = std::move(take);
    emit askingChanged();
}

void ChartLink::askRing(const QString& prompt, chart::ToolKind tool,
                        std::function<void(const geo::Ring&)> take) {
    ask(prompt, tool);
    takeRing_ = std::move(take);
    emit askingChanged();
}

void ChartLink::askShore(const QString& prompt, std::function<void(const chart::ShoreMade&)> take) {
    ask(prompt, chart::ToolKind::shore);
    takeShore_ = std::move(take);
    emit askingChanged();
}

void ChartLink::askLine(const QString& prompt, std::function<bool(const geo::Path&)> take) {
    ask(prompt, chart::ToolKind::stroke);
    takeLine_ = std::move(take);
    emit askingChanged();
}

void ChartLink::askSoundings(const QString& prompt, side_view::BrushAct act,
                             std::function<void(const water::SoundingChoice&)> take) {
    ask(prompt, chart::ToolKind::lasso);
    brush_ = act;
    takeSoundings_ = std::move(take);
    emit askingChanged();
}

void ChartLink::stopAsking() {
    if (isAsking()) {
        ask({}, chart::ToolKind::pan);
        emit askingChanged();
    }
}

void ChartLink::givePlace(geo::WaterPoint place) {
    // A copy, because taking a place may ask for another kind.
    const auto take = take_;
    const QString prompt = prompt_;
    if (take && !take(place) && prompt == prompt_) {
        stopAsking();
    }
}

void ChartLink::giveRing(const geo::Ring& ring) {
    if (const auto take = takeRing_) {
        stopAsking();
        take(ring);
    } else if (const auto takeSoundings = takeSoundings_; takeSoundings && brush_) {
        const auto& checked = content_.derived.checked;
        takeSoundings(changeable(content_,
                                 checked ? water::soundingsWithin(checked->survey, ring)
                                         : water::SoundingChoice(),
                                 *brush_));
    }
}

void ChartLink::giveLine(const geo::Path& line) {
    const auto take = takeLine_;
    const QString prompt = prompt_;
    if (take && !take(line) && prompt == prompt_) {
        stopAsking();
    }
}

void ChartLink::giveSoundings(int day, const std::vector<std::size_t>& soundings) {
    if (const auto takeSoundings = takeSoundings_; takeSoundings && brush_ && content_.water) {
        water::SoundingChoice choice(content_.water->days.size());
        choice.at(static_cast<std::size_t>(day)) = soundings;
        takeSoundings(changeable(content_, std::move(choice), *brush_));
    }
}

void ChartLink::giveShore(const chart::ShoreMade& made) {
    if (const auto take = takeShore_) {
        take(made);
    }
}

namespace {

/// \return whether the value was another.
template <class T>
bool replace(T& held, T value) {
    if (held == value) {
        return false;
    }
    held = std::move(value);
    return true;
}

} // namespace

void ChartLink::selectMark(std::optional<int> rank) {
    if (replace(content_.selectedMark, rank)) {
        emit contentChanged();
    }
}

void ChartLink::selectSection(std::optional<int> section) {
    if (replace(content_.selectedSection, section)) {
        emit contentChanged();
    }
}

void ChartLink::selectZone(std::optional<int> zone) {
    if (replace(content_.selectedZone, zone)) {
        emit contentChanged();
    }
}

void ChartLink::pickZones(chart::ZonesPicked family) {
    if (replace(content_.zonesPicked, family)) {
        content_.selectedZone.reset();
        emit contentChanged();
    }
}

void ChartLink::stopPickingZones(chart::ZonesPicked family) {
    if (content_.zonesPicked == family) {
        pickZones(chart::ZonesPicked::none);
    }
}

void ChartLink::selectStay(std::optional<logbook::StayId> stay) {
    if (replace(content_.selectedStay, stay)) {
        emit contentChanged();
    }
}

void ChartLink::chooseSounding(std::optional<chart::SoundingPick> sounding, bool isToBeShown) {
    const bool isThere = sounding && isSounding(content_, *sounding);
    const bool hasChanged = replace(sounding_, isThere ? sounding : std::nullopt);
    if (sounding_ && replace(crossing_, std::optional<std::size_t>())) {
        emit crossingChosen(false);
    }
    if (hasChanged || isToBeShown) {
        emit soundingChosen(isToBeShown);
    }
}

void ChartLink::chooseCrossing(std::optional<std::size_t> crossing, bool isToBeShown) {
    const auto& checked = content_.derived.checked;
    const bool isThere = crossing && checked && *crossing < checked->crossings.size();
    const bool hasChanged = replace(crossing_, isThere ? crossing : std::nullopt);
    if (crossing_ && replace(sounding_, std::optional<chart::SoundingPick>())) {
        emit soundingChosen(false);
    }
    if (hasChanged || isToBeShown) {
        emit crossingChosen(isToBeShown);
    }
}

void ChartLink::stopLookingAlong() {
    chooseSounding(std::nullopt, false);
    chooseCrossing(std::nullopt, false);
    emit lookedAlong(std::nullopt);
}

std::optional<geo::WaterPoint> ChartLink::chosenPlace() const {
    if (crossing_) {
        return content_.derived.checked->crossings[*crossing_].at;
    }
    if (!sounding_ || !isSounding(content_, *sounding_)) {
        return std::nullopt;
    }
    const auto& days = content_.derived.checked->survey.days;
    return days[static_cast<std::size_t>(sounding_->day)].points[sounding_->sounding];
}

std::optional<chart::SoundingPick> ChartLink::chosenOnTrack() const {
    if (crossing_) {
        const water::CheckedSurvey& checked = *content_.derived.checked;
        return chart::pickOfKept(checked.survey, checked.crossings[*crossing_].soundingB);
    }
    return sounding_;
}

void ChartLink::setNextLines(std::shared_ptr<const surface::SurveyTrip> lines) {
    if (replace(content_.nextLines, std::move(lines))) {
        emit contentChanged();
    }
}

void ChartLink::setBackdrop(std::shared_ptr<const water::Backdrop> backdrop, double strength) {
    const bool isOther = replace(content_.backdrop, std::move(backdrop));
    if (replace(content_.backdropStrength, strength) || isOther) {
        emit contentChanged();
    }
}

void ChartLink::setDayTrack(std::shared_ptr<const rates::Track> track) {
    if (replace(content_.dayTrack, std::move(track))) {
        emit contentChanged();
    }
}

void ChartLink::setSectionRates(std::shared_ptr<const rates::RateTable> rates) {
    if (replace(content_.sectionRates, std::move(rates))) {
        emit contentChanged();
    }
}

} // namespace days
