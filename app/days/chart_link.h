// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/sounding_pick.h"
#include "app/chart/tools/tool.h"
#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"
#include "app/side_view/brush.h"
#include "core/water/questions/soundings_within.h"

#include <QObject>
#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <set>

namespace days {

/// What chart and side view show at the moment: the open water with what the days choose to show
/// and select. Tells when it changed; the window hands it to the canvas and to the side view.
class ChartLink : public QObject {
    Q_OBJECT
public:
    ChartLink(open_water::OpenWater& open, preferences::Preferences& preferences,
              QObject* parent = nullptr);

    [[nodiscard]] const chart::ChartContent& content() const { return content_; }

    void setShown(chart::LayerKind kind, bool isShown);
    void selectMark(std::optional<int> rank);
    void selectSection(std::optional<int> section);
    void selectZone(std::optional<int> zone);
    /// From now on a click on the chart chooses a zone of this family, until stopPickingZones() of
    /// the same one, which also lets go of the chosen zone.
    void pickZones(chart::ZonesPicked family);
    void stopPickingZones(chart::ZonesPicked family);
    void selectStay(std::optional<logbook::StayId> stay);
    /// Chooses one sounding to be looked at in chart and side view. \param isToBeShown brings it
    /// into the middle of both; without, they lie still where it can be seen.
    void chooseSounding(std::optional<chart::SoundingPick> sounding, bool isToBeShown);
    [[nodiscard]] std::optional<chart::SoundingPick> chosenSounding() const { return sounding_; }
    /// The same for a crossing, by its position among all; only one thing is chosen at a time.
    void chooseCrossing(std::optional<std::size_t> crossing, bool isToBeShown);
    [[nodiscard]] std::optional<std::size_t> chosenCrossing() const { return crossing_; }
    /// Where what was chosen lies; nothing where nothing is.
    [[nodiscard]] std::optional<geo::WaterPoint> chosenPlace() const;
    /// The sounding beside it in the side view: itself, or the one before the crossing on its later
    /// pass.
    [[nodiscard]] std::optional<chart::SoundingPick> chosenOnTrack() const;
    void setNextLines(std::shared_ptr<const surface::SurveyTrip> lines);
    void setDayTrack(std::shared_ptr<const rates::Track> track);
    void setBackdrop(std::shared_ptr<const water::Backdrop> backdrop, double strength);
    void setSectionRates(std::shared_ptr<const rates::RateTable> rates);
    /// Asks the canvas to show the place.
    void lookAt(geo::WaterPoint place) { emit lookedAt(place); }
    /// Asks the side view to show the depths along the track of a survey day, by its position.
    void lookAlong(int day) { emit lookedAlong(day); }
    /// Nothing of the tracks is looked at any more, nor any sounding or crossing of them.
    void stopLookingAlong();

    /// Asks the user to point at places of the chart; `take` is given one after the other until it
    /// says that it has enough (false), something else is asked, or asking is stopped.
    void askPlaces(const QString& prompt, std::function<bool(geo::WaterPoint)> take);
    /// Asks the user to go round something on the chart, once: by clicks (ToolKind::polygon) or
    /// with the button held (ToolKind::lasso).
    void askRing(const QString& prompt, chart::ToolKind tool,
                 std::function<void(const geo::Ring&)> take);
    /// Asks the user to draw a line on the chart, until `take` says that it has what it needs
    /// (false), something else is asked, or asking is stopped.
    void askLine(const QString& prompt, std::function<bool(const geo::Path&)> take);
    /// Asks for soundings until asking is stopped: gone round on the chart, or brushed over in the
    /// side view, with the button held. `take` is given those that the act can change.
    void askSoundings(const QString& prompt, side_view::BrushAct act,
                      std::function<void(const water::SoundingChoice&)> take);
    /// Lets the user take hold of the corners of the shoreline until asking is stopped.
    void askShore(const QString& prompt, std::function<void(const chart::ShoreMade&)> take);
    void stopAsking();
    [[nodiscard]] bool isAsking() const { return tool_ != chart::ToolKind::pan; }
    /// What the hand needs for what is being asked.
    [[nodiscard]] chart::ToolKind tool() const { return tool_; }
    /// What is being asked, for the bottom line.
    [[nodiscard]] const QString& prompt() const { return prompt_; }
    /// The brush for the side view while soundings are asked for.
    [[nodiscard]] std::optional<side_view::BrushAct> brush() const { return brush_; }
    /// The user has pointed, gone round, brushed over, or reshaped the shore.
    void givePlace(geo::WaterPoint place);
    void giveRing(const geo::Ring& ring);
    void giveLine(const geo::Path& line);
    void giveSoundings(int day, const std::vector<std::size_t>& soundings);
    void giveShore(const chart::ShoreMade& made);

signals:
    void contentChanged();
    void lookedAt(geo::WaterPoint place);
    void lookedAlong(std::optional<int> day);
    void soundingChosen(bool isToBeShown);
    void crossingChosen(bool isToBeShown);
    void askingChanged();

private:
    void takeFromOpenWater();
    void takeAge();
    [[nodiscard]] chart::ContentAge ageNow() const;
    void ask(const QString& prompt, chart::ToolKind tool);

    open_water::OpenWater& open_;
    preferences::Preferences& preferences_;
    chart::ChartContent content_;
    std::optional<chart::SoundingPick> sounding_;
    std::optional<std::size_t> crossing_;
    QString prompt_;
    chart::ToolKind tool_ = chart::ToolKind::pan;
    std::function<bool(geo::WaterPoint)> take_;
    std::function<void(const geo::Ring&)> takeRing_;
    std::function<bool(const geo::Path&)> takeLine_;
    std::optional<side_view::BrushAct> brush_;
    std::function<void(const water::SoundingChoice&)> takeSoundings_;
    std::function<void(const chart::ShoreMade&)> takeShore_;
};

} // namespace days
