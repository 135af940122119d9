// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/agree_offset.h"
#include "app/edits/set_aside_soundings.h"
#include "app/edits/take_back_soundings.h"
#include "app/widgets/plain_table.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace days::survey_day {

namespace {

constexpr int rowsShown = 10;

class CheckStep : public SurveyStep {
public:
    explicit CheckStep(SurveyContext context) : SurveyStep(context) {
        addHeading(tr("Set aside"));
        setAside_ = new widgets::PlainTable({tr("Reason"), tr("Soundings")}, rowsShown, this);
        addWide(setAside_);
        lasso_ = makeButton(tr("Set aside..."), QStringLiteral("Ctrl+D"),
                            tr("Go round soundings that are wrong, with the button held"),
                            [this] { askSoundings(edits::setAsideSoundings); });
        takeBack_ = makeButton(tr("Take back..."), QStringLiteral("Ctrl+B"),
                               tr("Go round soundings that are right although set aside"),
                               [this] { askSoundings(edits::takeBackSoundings); });
        addRow({lasso_, takeBack_});
        addHeading(tr("Where passes cross"));
        crossings_ = new widgets::PlainTable({tr("Crossings"), QString()}, rowsShown, this);
        addWide(crossings_);
        caution_ = addWords();
        setWords(caution_, tr("A yardstick, no hydrographic survey."));
        addHeading(tr("Days against each other"));
        offers_ = new QWidget(this);
        new QVBoxLayout(offers_);
        offers_->layout()->setContentsMargins(0, 0, 0, 0);
        addWide(offers_);
        gain_ = addWords();
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const CheckView view = checkViewOf(input);
        setAside_->setRows(view.setAside);
        lasso_->setEnabled(input.derived.checked != nullptr);
        takeBack_->setEnabled(!view.setAside.empty());
        crossings_->setRows(view.crossings);
        layOffers(view.offers);
        setWords(gain_, view.gain);
        return {view.state, input.isStale(water::Step::reduce)};
    }
    // The tracks come onto the chart with the step that is about them.
    void showEvent(QShowEvent* event) override {
        SurveyStep::showEvent(event);
        context_.chart.setShown(chart::LayerKind::soundings, true);
        context_.chart.setShown(chart::LayerKind::crossings, true);
    }
    void hideEvent(QHideEvent* event) override {
        SurveyStep::hideEvent(event);
        context_.chart.setShown(chart::LayerKind::soundings, false);
        context_.chart.setShown(chart::LayerKind::crossings, false);
    }

private:
    void askSoundings(void (*edit)(open_water::OpenWater&, const water::SoundingChoice&)) {
        context_.chart.askRing(
            tr("Go round the soundings with the button held"), chart::ToolKind::lasso,
            [this, edit](const geo::Ring& ring) {
                // Positions hold for the days as they were looked over.
                if (!context_.open.isCurrent(water::Step::reduce)) {
                    tell({base::ErrorKind::wrongUse,
                          "the soundings are just being looked over again", "",
                          "go round them once more when that is done"});
                    return;
                }
                edit(context_.open,
                     water::soundingsWithin(context_.open.derived().checked->survey, ring));
            });
    }

    void layOffers(const std::vector<CheckView::Offer>& offers) {
        QLayout* column = offers_->layout();
        while (QLayoutItem* item = column->takeAt(0)) {
            item->widget()->deleteLater();
            delete item;
        }
        for (const CheckView::Offer& offer : offers) {
            auto* row = new QWidget(offers_);
            auto* across = new QHBoxLayout(row);
            across->setContentsMargins(0, 0, 0, 0);
            auto* words = new QLabel(offer.words, row);
            words->setWordWrap(true);
            across->addWidget(words, 1);
            if (offer.isOffered || offer.isAgreed) {
                auto* button = new QPushButton(offer.isAgreed ? tr("Take back") : tr("Agree"), row);
                button->setToolTip(
                    tr("Nothing is added to a day's depths before you agree; it can be undone"));
                connect(button, &QPushButton::clicked, this, [this, offer] {
                    edits::agreeOffset(context_.open, offer.day,
                                       offer.isAgreed ? std::nullopt : std::optional(offer.offset));
                });
                across->addWidget(button);
            }
            column->addWidget(row);
        }
    }

    widgets::PlainTable* setAside_ = nullptr;
    QPushButton* lasso_ = nullptr;
    QPushButton* takeBack_ = nullptr;
    widgets::PlainTable* crossings_ = nullptr;
    QLabel* caution_ = nullptr;
    QWidget* offers_ = nullptr;
    QLabel* gain_ = nullptr;
};

} // namespace

SurveyStep* makeCheckStep(SurveyContext context) {
    return new CheckStep(context);
}

} // namespace days::survey_day
