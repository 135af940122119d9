// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/drawing_view.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/change_settings.h"
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
            {tr("Cell"), tr("Side of a cell of the depth grid"),
             [this](const QString& text) { return text.isEmpty() || lengthOf(text).has_value(); },
             tr("chosen from the soundings"), tr("a length from 0.5 to 100 m, or nothing")},
            [this](const QString& text) {
                tellIfWrong(
                    edits::changeSettings(context_.open, tr("Set cell"),
                                          [&](water::Settings& s) { s.cell = lengthOf(text); }));
            });
        draw_ = makeButton(tr("Draw"), {}, tr("Draw the water again"),
                           [this] { context_.open.deriveUpTo(water::Step::sections); });
        addRow({draw_});
        trust_ = addWords();
        form_ = new widgets::PlainTable({tr("The water"), QString()}, rowsShown, this);
        addWide(form_);
        how_ = new widgets::PlainTable({tr("How it was drawn"), QString()}, rowsShown, this);
        addWide(how_);
        notes_ = addWords();
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const DrawingView view = drawingViewOf(input);
        cell_->showAmount(view.cell);
        draw_->setEnabled(view.canDraw);
        setWords(trust_, view.trust);
        form_->setVisible(!view.form.empty());
        form_->setRows(view.form);
        how_->setVisible(!view.how.empty());
        how_->setRows(view.how);
        QStringList notes(view.notes.begin(), view.notes.end());
        setWords(notes_, notes.join('\n'));
        return {view.state, view.isStale};
    }

private:
    std::optional<units::Length> lengthOf(const QString& text) const {
        return wording::lengthTyped(text, context_.preferences.units());
    }

    widgets::AmountField* cell_ = nullptr;
    QPushButton* draw_ = nullptr;
    QLabel* trust_ = nullptr;
    widgets::PlainTable* form_ = nullptr;
    widgets::PlainTable* how_ = nullptr;
    QLabel* notes_ = nullptr;
};

} // namespace

SurveyStep* makeDrawingStep(SurveyContext context) {
    return new DrawingStep(context);
}

} // namespace days::survey_day
