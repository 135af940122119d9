// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/backdrop_part.h"
#include "app/days/survey_day/shoreline_view.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/change_facts.h"
#include "app/edits/reshape_shore.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QPushButton>

namespace days::survey_day {

namespace {

class ShorelineStep : public SurveyStep {
public:
    ShorelineStep(SurveyContext context, FileTaker& taker, BackdropKeeper& backdrop)
        : SurveyStep(context) {
        facts_ = addWords();
        addShoreButtons(taker);
        addEditButtons();
        addWide(new BackdropPart(context_, backdrop, this));
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
        trace_->setEnabled(view.canTrace);
        for (QPushButton* button : {reshape_, island_}) {
            button->setEnabled(view.hasShore && view.canTrace);
        }
        noIsland_->setEnabled(view.hasIslands);
        chartLevel_->showAmount(view.chartLevel);
        setWords(launch_, view.launch.isEmpty() ? tr("No launch set: ways are not counted.")
                                                : tr("Launch at %1").arg(view.launch));
        return {view.state, false};
    }

private:
    void addShoreButtons(FileTaker& taker) {
        trace_ = makeButton(tr("Trace..."), QStringLiteral("Ctrl+T"),
                            tr("Go round the water on the chart, corner by corner; islands inside "
                               "stay"),
                            [this] { askShore(); });
        remove_ =
            makeButton(tr("Take away"), {}, tr("Draw without this shoreline; it can be undone"),
                       [this] { tellIfWrong(edits::setShoreline(context_.open, {})); });
        addRow({makeButton(tr("Bring in..."), {},
                           tr("A shoreline from a file, or a track walked round the water"),
                           [&taker] { taker.ask(tr("Shoreline to bring in")); }),
                trace_, remove_});
    }

    void addEditButtons() {
        reshape_ =
            makeButton(tr("Reshape"), QStringLiteral("Ctrl+R"),
                       tr("Take hold of the shore: drag a corner, click the line for a new one, "
                          "Delete takes the chosen corner away; each can be undone"),
                       [this] { askReshape(); });
        island_ = makeButton(tr("Add island..."), QStringLiteral("Ctrl+I"),
                             tr("Go round an island on the chart, corner by corner"),
                             [this] { askIsland(); });
        noIsland_ =
            makeButton(tr("Remove island"), {}, tr("Point into the island to be taken away"),
                       [this] { askNoIsland(); });
        addRow({reshape_, island_, noIsland_});
    }

    void askShore() {
        context_.chart.ask<chart::RingMade>(
            tr("Click round the water, corner by corner; double-click to close the line"),
            chart::ToolKind::polygon, [this](const chart::RingMade& made) {
                tellIfWrong(edits::traceShore(context_.open, made.ring));
            });
    }

    void askReshape() {
        context_.chart.ask<chart::ShoreMade>(
            tr("Drag a corner of the shore; click the line for a new one; Delete takes the chosen "
               "one away"),
            chart::ToolKind::shore, [this](const chart::ShoreMade& made) {
                using Act = chart::ShoreMade::Act;
                tellIfWrong(made.act == Act::move
                                ? edits::moveShoreCorner(context_.open, made.corner, made.at)
                            : made.act == Act::add
                                ? edits::addShoreCorner(context_.open, made.corner, made.at)
                                : edits::removeShoreCorner(context_.open, made.corner));
                return true;
            });
    }

    void askIsland() {
        context_.chart.ask<chart::RingMade>(
            tr("Click round the island, corner by corner; double-click to close the line"),
            chart::ToolKind::polygon, [this](const chart::RingMade& made) {
                tellIfWrong(edits::addIsland(context_.open, made.ring));
            });
    }

    void askNoIsland() {
        context_.chart.ask<chart::PointMade>(
            tr("Point into the island to be taken away"), chart::ToolKind::note,
            [this](const chart::PointMade& made) {
                tellIfWrong(edits::removeIslandAt(context_.open, made.at));
            });
    }

    void askLaunch() {
        context_.chart.ask<chart::PointMade>(
            tr("Point at the launch"), chart::ToolKind::note, [this](const chart::PointMade& made) {
                if (water().frame) {
                    const geo::LonLat launch = water().frame->toEarth(made.at);
                    edits::setPlan(context_.open, tr("Set launch"),
                                   [&](marks::Plan& plan) { plan.launch = launch; });
                }
            });
    }

    QLabel* facts_ = nullptr;
    QPushButton* trace_ = nullptr;
    QPushButton* remove_ = nullptr;
    QPushButton* reshape_ = nullptr;
    QPushButton* island_ = nullptr;
    QPushButton* noIsland_ = nullptr;
    widgets::AmountField* chartLevel_ = nullptr;
    QLabel* launch_ = nullptr;
};

} // namespace

SurveyStep* makeShorelineStep(SurveyContext context, FileTaker& taker, BackdropKeeper& backdrop) {
    return new ShorelineStep(context, taker, backdrop);
}

} // namespace days::survey_day
