// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/survey_day/lead_line_part.h"
#include "app/days/survey_day/soundings_view.h"
#include "app/days/survey_day/steps.h"
#include "app/days/survey_day/survey_day_fields.h"
#include "app/edits/change_survey_day.h"
#include "app/edits/remove_survey_day.h"
#include "app/widgets/plain_table.h"
#include "app/wording/mid_sentence.h"
#include "app/wording/survey_words.h"
#include "app/wording/typed_amount.h"

#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace days::survey_day {

namespace {

using soundings::SurveyDay;

constexpr int rowsShown = 6;

class SoundingsStep : public SurveyStep {
public:
    SoundingsStep(SurveyContext context, FileTaker& taker) : SurveyStep(context) {
        empty_ = addWords();
        table_ = new widgets::PlainTable({tr("Day"), tr("Soundings"), tr("Level"), tr("Water")},
                                         rowsShown, this);
        table_->setAccessibleName(tr("Survey days"));
        addWide(table_);
        connect(table_, &widgets::PlainTable::rowChosen, this, [this](int row) {
            showChosen();
            if (row >= 0) {
                context_.chart.lookAlong(row);
            }
        });
        connect(table_, &widgets::PlainTable::removeAsked, this, [this] { removeChosen(); });
        others_ = addWords();
        remove_ = makeButton(tr("Remove day"), {},
                             tr("Take the chosen day out of the water; it can be undone"),
                             [this] { removeChosen(); });
        addRow({makeButton(tr("Bring in files..."), QStringLiteral("Ctrl+I"),
                           tr("Soundings, shoreline, notes, log: any file"),
                           [&taker] { taker.ask(tr("Files to bring in")); }),
                remove_});
        source_ = addWords();
        layFields();
        leadLine_ = new LeadLinePart(context);
        addWide(leadLine_);
    }

protected:
    DayStepLine refreshFrom(const ViewInput& input) override {
        const SoundingsView view = soundingsViewOf(input);
        setWords(empty_, view.rows.empty() ? tr("Drop a log of soundings on the window: NMEA 0183, "
                                                "GPX, text, or anything with depths.")
                                           : QString());
        table_->setVisible(!view.rows.empty());
        table_->setRows(view.rows);
        if (table_->chosen() < 0 && !view.rows.empty()) {
            table_->chooseQuietly(0);
        }
        setWords(others_, view.others);
        showChosen();
        leadLine_->refresh();
        return {view.state, false};
    }
    // The tracks and the leads come onto the chart with the step that is about them.
    void showEvent(QShowEvent* event) override {
        SurveyStep::showEvent(event);
        context_.chart.setShown(chart::LayerKind::soundings, true);
    }
    void hideEvent(QHideEvent* event) override {
        SurveyStep::hideEvent(event);
        context_.chart.stopLookingAlong();
        context_.chart.setShown(chart::LayerKind::soundings, false);
    }

private:
    /// An amount that belongs to the chosen day. `set` returns whether the text means one.
    widgets::AmountField* layField(const QString& label, const QString& help,
                                   const QString& whenEmpty, const QString& hint,
                                   const std::function<bool(const QString&, SurveyDay&)>& set) {
        const auto isRight = [set](const QString& text) {
            SurveyDay trial;
            return set(text, trial);
        };
        return addAmount({label, help, isRight, whenEmpty, hint}, [this, label,
                                                                   set](const QString& text) {
            if (const SurveyDay* day = chosen()) {
                const SurveyDay before = *day;
                edits::changeSurveyDay(context_.open, tr("Set %1").arg(wording::midSentence(label)),
                                       day->id, [&](SurveyDay& d) { set(text, d); });
                tellWhatWasDropped(before);
            }
        });
    }

    /// An agreement that fell away with the level it was made on is never let go in silence.
    void tellWhatWasDropped(const SurveyDay& before) {
        const auto& days = context_.open.water()->days;
        const auto after = std::ranges::find(days, before.id, &SurveyDay::id);
        if (after == days.end()) {
            return;
        }
        const QString words =
            wording::agreementDropped(before, *after, wording::Words(context_.preferences.units()));
        if (!words.isEmpty()) {
            emit context_.open.happened(words);
        }
    }

    void layFields() {
        const auto units = [this] { return context_.preferences.units(); };
        level_ = layField(
            tr("Level"), tr("Water level on the gauge that day"), tr("not read"),
            tr("a level such as 0.35 m or 1ft 2in"), [units](const QString& text, SurveyDay& day) {
                const auto level = wording::lengthTyped(text, units());
                day.gauge = level ? soundings::Gauge::constant(
                                        units::WaterLevel::metresOnGauge(level->inMetres()))
                                  : soundings::Gauge();
                return level.has_value() || text.isEmpty();
            });
        temperature_ = layField(
            tr("Water"), tr("Water temperature: sound runs slower in cold water"), tr("not known"),
            tr("a temperature such as 12.5 or 54 F"), [units](const QString& text, SurveyDay& day) {
                day.waterTemperature = wording::waterTemperatureTyped(text, units());
                return day.waterTemperature.has_value() || text.isEmpty();
            });
        draft_ =
            layField(tr("Draft"), tr("From the surface down to the transducer"), {},
                     tr("a depth from 0 to 3 m"), [units](const QString& text, SurveyDay& day) {
                         const auto draft = wording::depthTyped(text, units());
                         day.sounder.draft = draft.value_or(units::Depth());
                         return draft && draft->inMetres() >= 0.0 && draft->inMetres() <= 3.0;
                     });
        soundSpeed_ = layField(
            tr("Sound speed set in the sounder"),
            tr("Speed of sound that the sounder reckons with; 1500 m/s unless its manual says "
               "otherwise"),
            {}, tr("a speed from 1300 to 1700 m/s"), [units](const QString& text, SurveyDay& day) {
                const auto speed = wording::soundSpeedTyped(text, units());
                day.sounder.assumedSoundSpeed = speed.value_or(units::Speed());
                return speed && speed->inMetresPerSecond() >= 1300.0 &&
                       speed->inMetresPerSecond() <= 1700.0;
            });
    }

    const SurveyDay* chosen() const {
        const int row = table_->chosen();
        const auto& days = water().days;
        return row >= 0 && row < static_cast<int>(days.size())
                   ? &days[static_cast<std::size_t>(row)]
                   : nullptr;
    }

    void showChosen() {
        const SurveyDay* day = chosen();
        remove_->setEnabled(day != nullptr);
        for (QWidget* field :
             std::initializer_list<QWidget*>{level_, temperature_, draft_, soundSpeed_}) {
            field->setEnabled(day != nullptr);
        }
        const SurveyDayFields fields =
            day == nullptr ? SurveyDayFields() : surveyDayFieldsOf(*day, words());
        setWords(source_,
                 day == nullptr ? QString() : tr("%1, from %2").arg(fields.name, fields.source));
        level_->showAmount(fields.level);
        temperature_->showAmount(fields.waterTemperature);
        draft_->showAmount(fields.draft);
        soundSpeed_->showAmount(fields.soundSpeed);
    }

    void removeChosen() {
        if (const SurveyDay* day = chosen()) {
            edits::removeSurveyDay(context_.open, day->id);
        }
    }

    QLabel* empty_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QLabel* others_ = nullptr;
    QLabel* source_ = nullptr;
    QPushButton* remove_ = nullptr;
    LeadLinePart* leadLine_ = nullptr;
    widgets::AmountField* level_ = nullptr;
    widgets::AmountField* temperature_ = nullptr;
    widgets::AmountField* draft_ = nullptr;
    widgets::AmountField* soundSpeed_ = nullptr;
};

} // namespace

SurveyStep* makeSoundingsStep(SurveyContext context, FileTaker& taker) {
    return new SoundingsStep(context, taker);
}

} // namespace days::survey_day
