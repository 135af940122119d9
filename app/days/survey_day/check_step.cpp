// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/check_view.h"
#include "app/days/survey_day/crossings_part.h"
#include "app/days/survey_day/set_aside_part.h"
#include "app/days/survey_day/steps.h"
#include "app/edits/agree_delay.h"
#include "app/edits/agree_offset.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <functional>

namespace days::survey_day {

namespace {

class CheckStep : public SurveyStep {
public:
    explicit CheckStep(SurveyContext context) : SurveyStep(context) {
        setAside_ = new SetAsidePart(context);
        addWide(setAside_);
        crossings_ = new CrossingsPart(context);
        addWide(crossings_);
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
        setAside_->refresh();
        crossings_->refresh();
        layOffers(view);
        setWords(gain_, view.gain);
        return {view.state, input.isStale(water::Step::reduce)};
    }
    // The tracks come onto the chart with the step that is about them.
    void showEvent(QShowEvent* event) override {
        SurveyStep::showEvent(event);
        context_.chart.setShown(chart::LayerKind::soundings, true);
        context_.chart.setShown(chart::LayerKind::crossings, true);
        if (!water().days.empty()) {
            context_.chart.lookAlong(0);
        }
    }
    void hideEvent(QHideEvent* event) override {
        SurveyStep::hideEvent(event);
        context_.chart.stopLookingAlong();
        context_.chart.setShown(chart::LayerKind::soundings, false);
        context_.chart.setShown(chart::LayerKind::crossings, false);
    }

private:
    void layOffers(const CheckView& view) {
        QLayout* column = offers_->layout();
        while (QLayoutItem* item = column->takeAt(0)) {
            item->widget()->deleteLater();
            delete item;
        }
        for (const CheckView::Offer& offer : view.offers) {
            layOffer(offer.words, offer.isOffered, offer.isAgreed,
                     tr("Nothing is added to a day's depths before you agree; it can be undone"),
                     [this, offer] {
                         edits::agreeOffset(context_.open, offer.day,
                                            offer.isAgreed ? std::nullopt
                                                           : std::optional(offer.offset));
                     });
        }
        for (const CheckView::DelayOffer& offer : view.delays) {
            layOffer(offer.words, offer.isOffered, offer.isAgreed,
                     tr("No sounding is moved along its track before you agree; it can be undone"),
                     [this, offer] {
                         edits::agreeDelay(context_.open, offer.day,
                                           offer.isAgreed ? std::nullopt
                                                          : std::optional(offer.delay_s));
                     });
        }
    }

    void layOffer(const QString& text, bool isOffered, bool isAgreed, const QString& help,
                  const std::function<void()>& act) {
        auto* row = new QWidget(offers_);
        auto* across = new QHBoxLayout(row);
        across->setContentsMargins(0, 0, 0, 0);
        auto* words = new QLabel(text, row);
        words->setWordWrap(true);
        across->addWidget(words, 1);
        if (isOffered || isAgreed) {
            auto* button = new QPushButton(isAgreed ? tr("Take back") : tr("Agree"), row);
            button->setToolTip(help);
            connect(button, &QPushButton::clicked, this, act);
            across->addWidget(button);
        }
        offers_->layout()->addWidget(row);
    }

    SetAsidePart* setAside_ = nullptr;
    CrossingsPart* crossings_ = nullptr;
    QWidget* offers_ = nullptr;
    QLabel* gain_ = nullptr;
};

} // namespace

SurveyStep* makeCheckStep(SurveyContext context) {
    return new CheckStep(context);
}

} // namespace days::survey_day
