// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"

#include "app/chart/verdict_now.h"
#include "app/days/layer_strengths.h"
#include "app/days/still_there.h"
#include "app/days/theme_inks.h"

#include <algorithm>

namespace days {

using chart::LayerKind;

namespace {

/// Whether the sounding is one of those that were looked over.
bool isSounding(const chart::ChartContent& content, chart::SoundingPick pick) {
    if (!chart::isLookedOver(content)) {
        return false;
    }
    const auto day = static_cast<std::size_t>(pick.day);
    const auto& reduced = content.derived.checked->survey.days;
    return day < reduced.size() && pick.sounding < reduced[day].points.size();
}

bool isRod(const chart::ChartContent& content, const chart::Selection& selection) {
    if (!content.planned || !selection.mark || !selection.rod) {
        return false;
    }
    const auto& marks = content.planned->marks;
    const auto mark = std::ranges::find(marks, *selection.mark, &marks::Mark::rank);
    return mark != marks.end() && *selection.rod < mark->spread.rods.size();
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
    for (const LayerKind kind :
         {LayerKind::soundings, LayerKind::crossings, LayerKind::nextLines, LayerKind::marks,
          LayerKind::log, LayerKind::rates, LayerKind::change, LayerKind::graticule}) {
        content_.shown.erase(kind);
    }
    content_.strengths = keptStrengths();
    connect(&open_, &open_water::OpenWater::glimpsed, this,
            [this](const open_water::FirstLook& look) {
                stopAsking();
                look_ = look;
                takeContent();
            });
    connect(&open_, &open_water::OpenWater::openingEnded, this, [this] {
        if (look_) {
            takeFromOpenWater();
        }
    });
    connect(&open_, &open_water::OpenWater::opened, this, [this] {
        content_.nextLines.reset();
        content_.dayTrack.reset();
        content_.offeredStays.reset();
        content_.rates.reset();
        content_.years.reset();
        content_.logAsked.reset();
        content_.selection = {};
        emit selectionChanged();
        takeFromOpenWater();
    });
    connect(&open_, &open_water::OpenWater::changed, this, &ChartLink::takeFromOpenWater);
    connect(&open_, &open_water::OpenWater::derivedChanged, this, &ChartLink::takeFromOpenWater);
    connect(&open_, &open_water::OpenWater::plannedChanged, this, &ChartLink::takeFromOpenWater);
    connect(&preferences_, &preferences::Preferences::unitsChanged, this, &ChartLink::takeContent);
    connect(&preferences_, &preferences::Preferences::lookChanged, this, &ChartLink::takeContent);
    connect(&open_.jobs(), &jobs::JobRunner::finished, this, &ChartLink::takeAge);
    connect(&open_.jobs(), &jobs::JobRunner::started, this, &ChartLink::takeAge);
    takeFromOpenWater();
}

void ChartLink::takeFromOpenWater() {
    look_.reset();
    takeContent();
}

void ChartLink::takeContent() {
    const water::Derived& derived = look_ ? look_->kept : open_.derived();
    const chart::Selection before = content_.selection;
    // Numbers of zones and sections mean the same only in the same map.
    if (derived.sections != content_.derived.sections) {
        content_.selection.section = sectionStillThere(content_, derived.sections.get());
    }
    if (derived.structure != content_.derived.structure || derived.weed != content_.derived.weed) {
        content_.selection.zone.reset();
    }
    if (open_.planned() != content_.planned || open_.isPlanCurrent()) {
        setTried(std::nullopt); // What was tried is planned by now, or taken back.
    }
    if (open_.planned() != content_.planned) {
        content_.selection.mark = markStillThere(content_, open_.planned().get());
    }
    if (derived.checked != content_.derived.checked) {
        content_.selection.crossing.reset(); // its number means another one by now
    }
    content_.water = look_ ? look_->water : open_.water();
    content_.derived = derived;
    content_.planned = open_.planned();
    content_.age = ageNow();
    content_.words = wording::Words(preferences_.units());
    content_.inks = inksOf(preferences_.theme());
    content_.typeScale = preferences_.typeScale();
    content_.selection = possible(content_.selection);
    if (content_.selection != before) {
        emit selectionChanged();
    }
    emit contentChanged();
}

chart::ContentAge ChartLink::ageNow() const {
    chart::ContentAge age;
    age.isBeingRead = look_.has_value();
    if (age.isBeingRead) {
        return age;
    }
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

void ChartLink::begin(const QString& prompt, chart::ToolKind tool,
                      std::function<void(const chart::Made&)> take,
                      std::optional<side_view::BrushAct> brush) {
    ++asked_;
    prompt_ = prompt;
    tool_ = tool;
    take_ = std::move(take);
    brush_ = brush;
    takeSoundings_ = nullptr;
    emit askingChanged();
}

void ChartLink::askSoundings(const QString& prompt, side_view::BrushAct act,
                             std::function<void(const water::SoundingChoice&)> take) {
    const auto takeRing = [this, act, take](const chart::Made& made) {
        const auto* gone = std::get_if<chart::RingMade>(&made);
        const auto& checked = content_.derived.checked;
        if (gone != nullptr) {
            take(changeable(content_,
                            checked ? water::soundingsWithin(checked->survey, gone->ring)
                                    : water::SoundingChoice(),
                            act));
        }
    };
    begin(prompt, chart::ToolKind::lasso, takeRing, act);
    takeSoundings_ = std::move(take);
}

void ChartLink::stopAsking() {
    if (isAsking()) {
        begin({}, chart::ToolKind::pan, nullptr);
    }
}

void ChartLink::give(const chart::Made& made) {
    // A copy, because taking it may ask for something else.
    if (const auto take = take_; take && !look_) {
        take(made);
    }
}

void ChartLink::giveSoundings(int day, const std::vector<std::size_t>& soundings) {
    if (const auto takeSoundings = takeSoundings_;
        takeSoundings && brush_ && content_.water && !look_) {
        water::SoundingChoice choice(content_.water->days.size());
        choice.at(static_cast<std::size_t>(day)) = soundings;
        takeSoundings(changeable(content_, std::move(choice), *brush_));
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

template <class T>
chart::Selection with(chart::Selection selection, T chart::Selection::*part, T value) {
    selection.*part = std::move(value);
    return selection;
}

} // namespace

chart::Selection ChartLink::possible(chart::Selection selection) const {
    const auto& checked = content_.derived.checked;
    if (selection.sounding && !isSounding(content_, *selection.sounding)) {
        selection.sounding.reset();
    }
    if (selection.rod && !isRod(content_, selection)) {
        selection.rod.reset();
    }
    if (selection.crossing && (!checked || *selection.crossing >= checked->crossings.size())) {
        selection.crossing.reset();
    }
    return selection;
}

void ChartLink::select(chart::Selection selection) {
    const chart::Selection before = content_.selection;
    selection = possible(selection);
    if (selection.sounding && selection.crossing) {
        if (selection.sounding != before.sounding) {
            selection.crossing.reset();
        } else {
            selection.sounding.reset();
        }
    }
    if (!replace(content_.selection, selection)) {
        return;
    }
    emit selectionChanged();
    // A sounding or a crossing is shown over the layers, which need not be painted again for it.
    selection.sounding = before.sounding;
    selection.crossing = before.crossing;
    if (selection != before) {
        emit contentChanged();
    }
}

void ChartLink::selectMark(std::optional<int> rank) {
    chart::Selection wanted = with(selection(), &chart::Selection::mark, rank);
    wanted.rod.reset();
    select(std::move(wanted));
}

void ChartLink::selectRod(std::optional<std::size_t> rod) {
    select(with(selection(), &chart::Selection::rod, rod));
}

void ChartLink::selectSection(std::optional<int> section) {
    select(with(selection(), &chart::Selection::section, section));
}

void ChartLink::selectZone(std::optional<int> zone) {
    select(with(selection(), &chart::Selection::zone, zone));
}

void ChartLink::selectStay(std::optional<logbook::StayId> stay) {
    select(with(selection(), &chart::Selection::stay, stay));
}

void ChartLink::selectSounding(std::optional<chart::SoundingPick> sounding) {
    select(with(selection(), &chart::Selection::sounding, sounding));
}

void ChartLink::selectCrossing(std::optional<std::size_t> crossing) {
    select(with(selection(), &chart::Selection::crossing, crossing));
}

void ChartLink::pickZones(chart::ZonesPicked family) {
    if (replace(content_.zonesPicked, family)) {
        content_.selection.zone.reset();
        emit selectionChanged();
        emit contentChanged();
    }
}

void ChartLink::stopPickingZones(chart::ZonesPicked family) {
    if (content_.zonesPicked == family) {
        pickZones(chart::ZonesPicked::none);
    }
}

void ChartLink::stopLookingAlong() {
    chart::Selection to = selection();
    to.sounding.reset();
    to.crossing.reset();
    select(to);
    emit lookedAlong(std::nullopt);
}

std::optional<geo::WaterPoint> ChartLink::chosenPlace() const {
    if (selection().crossing) {
        return content_.derived.checked->crossings[*selection().crossing].at;
    }
    const auto& sounding = selection().sounding;
    if (!sounding || !isSounding(content_, *sounding)) {
        return std::nullopt;
    }
    const auto& days = content_.derived.checked->survey.days;
    return days[static_cast<std::size_t>(sounding->day)].points[sounding->sounding];
}

std::optional<chart::SoundingPick> ChartLink::chosenOnTrack() const {
    if (selection().crossing) {
        const water::CheckedSurvey& checked = *content_.derived.checked;
        return chart::pickOfKept(checked.survey,
                                 checked.crossings[*selection().crossing].soundingB);
    }
    return selection().sounding;
}

void ChartLink::setTried(std::optional<chart::TriedLie> tried) {
    if (tried || tried_) {
        tried_ = std::move(tried);
        emit triedChanged();
    }
}

void ChartLink::setNextLines(std::shared_ptr<const surface::SurveyTrip> lines) {
    if (replace(content_.nextLines, std::move(lines))) {
        emit contentChanged();
    }
}

void ChartLink::setStrength(LayerKind kind, double strength) {
    if (replace(content_.strengths[kind], strength)) {
        keepStrength(kind, strength);
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

void ChartLink::setOfferedStays(std::shared_ptr<const std::vector<logbook::Stay>> stays) {
    if (replace(content_.offeredStays, std::move(stays))) {
        emit contentChanged();
    }
}

void ChartLink::setRates(std::shared_ptr<const chart::ShownRates> rates) {
    if (replace(content_.rates, std::move(rates))) {
        emit contentChanged();
    }
}

void ChartLink::setYears(std::shared_ptr<const water::YearsCompared> years) {
    if (replace(content_.years, std::move(years))) {
        emit contentChanged();
    }
}

void ChartLink::setLogAsked(std::optional<water::ReviewQuestion> asked) {
    if (replace(content_.logAsked, std::move(asked))) {
        emit contentChanged();
    }
}

} // namespace days
