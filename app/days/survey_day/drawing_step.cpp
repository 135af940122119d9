// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/drawing_view.h"
#include "app/days/survey_day/hypsography_part.h"
#include "app/days/survey_day/steps.h"
#include "app/days/survey_day/years_part.h"
#include "app/edits/change_settings.h"
#include "app/edits/set_plan.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QPushButton>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 12;

class DrawingStep : public SurveyStep {
public:
    explicit DrawingStep(SurveyContext context) : SurveyStep(context) {
        cell_ = addAmount(
            {tr("Cell"),
             tr("Side of a cell of the depth grid, 0.5 to 100 m; empty: chosen from the soundings"),
             [this](const QString& text) { return text.isEmpty() || lengthOf(text).has_value(); },
             tr("chosen from the soundings"), tr("a length from 0.5 to 100 m, or nothing")},
            [this](const QString& text) {
                tellIfWrong(
                    edits::changeSettings(context_.open, tr("Set cell"),
                                          [&](water::Settings& s) { s.cell = lengthOf(text); }));
            });
        level_ = addAmount(
            {tr("Level today"),
             tr("How far the water stands above (+) or below (-) the level of the chart: contours, "
                "bands and the water's edge are drawn for it. The same as under Tomorrow, "
                "conditions"),
             [this](const QString& text) { return lengthOf(text).has_value(); },
             {},
             tr("a length such as +0.35 m or -1ft")},
            [this](const QString& text) {
                edits::setPlan(context_.open, tr("Set level"),
                               [&](marks::Plan& plan) { plan.day.levelChange = *lengthOf(text); });
            });
        doubts_ = addWarning();
        draw_ = makeButton(tr("Draw"), {}, tr("Draw the water again"), [this] { draw(); });
        addRow({draw_});
        trust_ = addWords();
        chosen_ = addWords();
        form_ = new widgets::PlainTable({tr("The water"), tr("at chart level"), tr("today")},
                                        rowsShown, this);
        addWide(form_);
        hypsography_ = new HypsographyPart(this);
        addWide(hypsography_);
        how_ = new widgets::PlainTable({tr("How it was drawn"), QString()}, rowsShown, this);
        addWide(how_);
        notes_ = addWords();
        years_ = new YearsPart(context);
        addWide(years_);
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const DrawingView view = drawingViewOf(input);
        cell_->showAmount(view.cell);
        level_->showAmount(view.level);
        setWords(doubts_, view.doubts);
        draw_->setEnabled(view.canDraw);
        setWords(trust_, view.trust);
        setWords(chosen_, view.chosen);
        form_->setVisible(!view.form.empty());
        form_->setColumnHidden(2, !view.hasToday);
        form_->setRows(view.form);
        hypsography_->show(view.hypsography);
        how_->setVisible(!view.how.empty());
        how_->setRows(view.how);
        QStringList notes(view.notes.begin(), view.notes.end());
        setWords(notes_, notes.join('\n'));
        years_->refresh();
        return {view.state, view.isStale};
    }

private:
    void draw() {
        open_water::OpenWater& open = context_.open;
        if (!open.isCurrent(water::Step::sections)) {
            open.deriveUpTo(water::Step::sections);
        } else if (open.derived().drawn && open.derived().drawn->report.isChoiceKept) {
            open.drawAfresh();
        } else {
            emit open.happened(
                tr("The drawing is up to date: nothing has changed since it was made."));
        }
    }
    std::optional<units::Length> lengthOf(const QString& text) const {
        return wording::lengthTyped(text, context_.preferences.units());
    }

    widgets::AmountField* cell_ = nullptr;
    widgets::AmountField* level_ = nullptr;
    QLabel* doubts_ = nullptr;
    QPushButton* draw_ = nullptr;
    QLabel* trust_ = nullptr;
    QLabel* chosen_ = nullptr;
    widgets::PlainTable* form_ = nullptr;
    HypsographyPart* hypsography_ = nullptr;
    widgets::PlainTable* how_ = nullptr;
    QLabel* notes_ = nullptr;
    YearsPart* years_ = nullptr;
};

} // namespace

SurveyStep* makeDrawingStep(SurveyContext context) {
    return new DrawingStep(context);
}

} // namespace days::survey_day
