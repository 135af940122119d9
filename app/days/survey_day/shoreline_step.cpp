// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/shoreline_view.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/change_facts.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QPushButton>

namespace days::survey_day {

namespace {

class ShorelineStep : public SurveyStep {
public:
    ShorelineStep(SurveyContext context, FileTaker& taker) : SurveyStep(context) {
        facts_ = addWords();
        remove_ =
            makeButton(tr("Take away"), {}, tr("Draw without this shoreline; it can be undone"),
                       [this] { tellIfWrong(edits::setShoreline(context_.open, {})); });
        trace_ = makeButton(tr("Trace..."), QStringLiteral("Ctrl+T"),
                            tr("Go round the water on the chart, corner by corner"),
                            [this] { askShore(); });
        addRow({makeButton(tr("Import..."), {},
                           tr("A shoreline from a file, or a track walked round the water"),
                           [&taker] { taker.ask(tr("Shoreline to bring in")); }),
                trace_, remove_});
        chartLevel_ = addAmount(
            {tr("Chart level"),
             tr("The gauge reading that all depths refer to"),
             [this](const QString& text) {
                 return wording::lengthTyped(text, context_.preferences.units()).has_value();
             },
             {},
             tr("a gauge reading such as 12.30 m")},
            [this](const QString& text) {
                const auto level = wording::lengthTyped(text, context_.preferences.units());
                edits::changeFacts(context_.open, tr("Set chart level"), [&](water::Water& w) {
                    w.chartLevel = units::WaterLevel::metresOnGauge(level->inMetres());
                });
            });
        launch_ = addWords();
        addRow(
            {makeButton(tr("Set launch"), {}, tr("Point on the chart at the place where you start"),
                        [this] { askLaunch(); })});
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const ShorelineView view = shorelineViewOf(input);
        setWords(facts_, view.facts);
        remove_->setEnabled(view.hasShore);
        trace_->setEnabled(input.water.frame.has_value());
        chartLevel_->showAmount(view.chartLevel);
        setWords(launch_, view.launch.isEmpty() ? tr("No launch set: ways are not counted.")
                                                : tr("Launch at %1").arg(view.launch));
        return {view.state, false};
    }

private:
    void askShore() {
        context_.chart.askRing(
            tr("Click round the water, corner by corner; double-click to close the line"),
            chart::ToolKind::polygon, [this](const geo::Ring& ring) {
                // Made by clicks, it may well cross itself; the outline says where.
                const auto& frame = water().frame;
                const auto outline = geo::Outline::make({{ring, {}}}, *frame);
                if (!outline) {
                    tell(outline.error());
                    return;
                }
                std::vector<geo::LonLatPiece> shoreline;
                for (const geo::Piece& piece : outline->pieces()) {
                    shoreline.push_back(geo::toEarth(piece, *frame));
                }
                tellIfWrong(edits::setShoreline(context_.open, std::move(shoreline)));
            });
    }

    void askLaunch() {
        context_.chart.askPlaces(tr("Point at the launch"), [this](geo::WaterPoint place) {
            if (water().frame) {
                const geo::LonLat launch = water().frame->toEarth(place);
                edits::setPlan(context_.open, tr("Set launch"),
                               [&](marks::Plan& plan) { plan.launch = launch; });
            }
            return false;
        });
    }

    QLabel* facts_ = nullptr;
    QPushButton* trace_ = nullptr;
    QPushButton* remove_ = nullptr;
    widgets::AmountField* chartLevel_ = nullptr;
    QLabel* launch_ = nullptr;
};

} // namespace

SurveyStep* makeShorelineStep(SurveyContext context, FileTaker& taker) {
    return new ShorelineStep(context, taker);
}

} // namespace days::survey_day
