// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_content.h"
#include "app/chart/lie_part.h"
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
#include <type_traits>
#include <utility>
#include <variant>

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
    /// One of chart::fadingLayers is drawn so strongly from now on, over 0 to 1; kept for the user.
    void setStrength(chart::LayerKind kind, double strength);
    [[nodiscard]] const chart::Selection& selection() const { return content_.selection; }
    /// Chooses what is to be looked at. A sounding or a crossing that is not there is none; of the
    /// two the one that is new stays.
    void select(chart::Selection selection);
    void selectMark(std::optional<int> rank);
    /// Of the chosen mark's rods, by position; nothing: the lie as a whole.
    void selectRod(std::optional<std::size_t> rod);
    void selectSection(std::optional<int> section);
    void selectZone(std::optional<int> zone);
    void selectStay(std::optional<logbook::StayId> stay);
    void selectSounding(std::optional<chart::SoundingPick> sounding);
    void selectCrossing(std::optional<std::size_t> crossing);
    /// Brings the chosen sounding or crossing into the middle of chart and side view, which
    /// otherwise lie still.
    void showChosen() { emit chosenShown(); }
    /// From now on a click on the chart chooses a zone of this family, until stopPickingZones() of
    /// the same one, which also lets go of the chosen zone.
    void pickZones(chart::ZonesPicked family);
    void stopPickingZones(chart::ZonesPicked family);
    /// Where the chosen sounding or crossing lies; nothing where none is.
    [[nodiscard]] std::optional<geo::WaterPoint> chosenPlace() const;
    /// The sounding beside it in the side view: itself, or the one before the crossing on its later
    /// pass.
    [[nodiscard]] std::optional<chart::SoundingPick> chosenOnTrack() const;
    /// How a mark would lie with what the hand on the chart holds where it is, until the next plan
    /// knows it; nothing: as it is planned.
    void setTried(std::optional<chart::TriedLie> tried);
    [[nodiscard]] const std::optional<chart::TriedLie>& tried() const { return tried_; }
    void setNextLines(std::shared_ptr<const surface::SurveyTrip> lines);
    void setDayTrack(std::shared_ptr<const rates::Track> track);
    void setBackdrop(std::shared_ptr<const water::Backdrop> backdrop, double strength);
    /// Stays found in the track that are not in the log yet; null for none.
    void setOfferedStays(std::shared_ptr<const std::vector<logbook::Stay>> stays);
    void setRates(std::shared_ptr<const chart::ShownRates> rates);
    /// What the bottom has done since an earlier survey; null for nothing.
    void setYears(std::shared_ptr<const water::YearsCompared> years);
    /// Shows only this part of the log; nothing for all of it.
    void setLogAsked(std::optional<water::ReviewQuestion> asked);
    /// Asks the canvas to show the place.
    void lookAt(geo::WaterPoint place) { emit lookedAt(place); }
    /// Asks the side view to show the depths along the track of a survey day, by its position.
    void lookAlong(int day) { emit lookedAlong(day); }
    /// Nothing of the tracks is looked at any more, nor any sounding or crossing of them.
    void stopLookingAlong();

    /// Asks the user to make something on the chart with this tool, of which `take` is given each
    /// `What` (one of chart::Made). A `take` that returns true goes on being asked for; false ends
    /// the asking; one that returns nothing is given one, once the asking has ended. Whatever else
    /// is asked takes its place.
    template <class What, class Take>
    void ask(const QString& prompt, chart::ToolKind tool, Take take) {
        begin(prompt, tool, [this, take = std::move(take)](const chart::Made& made) {
            const auto* what = std::get_if<What>(&made);
            if (what == nullptr) {
                return;
            }
            if constexpr (std::is_void_v<std::invoke_result_t<const Take&, const What&>>) {
                stopAsking(); // first: what `take` has to say stays to be read
                take(*what);
            } else {
                const int number = asked_;
                if (!take(*what) && number == asked_) {
                    stopAsking();
                }
            }
        });
    }
    /// Asks for soundings until asking is stopped: gone round on the chart, or brushed over in the
    /// side view, with the button held. `take` is given those that the act can change.
    void askSoundings(const QString& prompt, side_view::BrushAct act,
                      std::function<void(const water::SoundingChoice&)> take);
    void stopAsking();
    [[nodiscard]] bool isAsking() const { return tool_ != chart::ToolKind::pan; }
    /// What the hand needs for what is being asked.
    [[nodiscard]] chart::ToolKind tool() const { return tool_; }
    /// What is being asked, for the bottom line.
    [[nodiscard]] const QString& prompt() const { return prompt_; }
    /// The brush for the side view while soundings are asked for.
    [[nodiscard]] std::optional<side_view::BrushAct> brush() const { return brush_; }
    /// The user has made something on the chart.
    void give(const chart::Made& made);
    /// The user has brushed over soundings of a day in the side view.
    void giveSoundings(int day, const std::vector<std::size_t>& soundings);

signals:
    void contentChanged();
    void lookedAt(geo::WaterPoint place);
    void lookedAlong(std::optional<int> day);
    void selectionChanged();
    void chosenShown();
    void triedChanged();
    void askingChanged();

private:
    void takeFromOpenWater();
    void takeContent();
    void takeAge();
    [[nodiscard]] chart::ContentAge ageNow() const;
    void begin(const QString& prompt, chart::ToolKind tool,
               std::function<void(const chart::Made&)> take,
               std::optional<side_view::BrushAct> brush = {});
    [[nodiscard]] chart::Selection possible(chart::Selection selection) const;

    open_water::OpenWater& open_;
    preferences::Preferences& preferences_;
    chart::ChartContent content_;
    /// Shown instead of the open water until it is read; nothing can be done to it.
    std::optional<open_water::FirstLook> look_;
    std::optional<chart::TriedLie> tried_;
    QString prompt_;
    chart::ToolKind tool_ = chart::ToolKind::pan;
    int asked_ = 0; ///< How often: tells one asking from the next.
    std::function<void(const chart::Made&)> take_;
    std::optional<side_view::BrushAct> brush_;
    std::function<void(const water::SoundingChoice&)> takeSoundings_;
};

} // namespace days
