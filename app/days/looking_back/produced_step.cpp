// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_digest.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/steps.h"
#include "app/widgets/interval_bar.h"
#include "app/widgets/plain_table.h"
#include "app/wording/typed_amount.h"
#include "core/water/questions/review_log.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>

namespace days::looking_back {

namespace {

constexpr int rowsShown = 14;

class ProducedStep : public DayStep {
public:
    explicit ProducedStep(DayContext context) : DayStep(context) {
        addQuestion();
        words_ = addWords();
        bars_ = new widgets::IntervalBar(chart::Palette::screen().plum, this);
        addWide(bars_);
        table_ = new widgets::PlainTable({tr("Where"), tr("rod-h"), tr("stays"), tr("blank"),
                                          tr("runs"), tr("fish"), tr("best"), tr("steadied")},
                                         rowsShown, this);
        addWide(table_);
        notes_ = addWords();
    }

    DayStepLine refresh() override {
        const QStringList species = speciesIn(sumOf(water().log, water().clock));
        if (species != shownSpecies_) {
            const QSignalBlocker quiet(species_);
            const QString chosen = species_->currentData().toString();
            species_->clear();
            species_->addItem(tr("all"), QString());
            for (const QString& one : species) {
                species_->addItem(one, one);
            }
            species_->setCurrentIndex(std::max(0, species_->findData(chosen)));
            shownSpecies_ = species;
        }
        ask();
        show();
        if (!rates_) {
            return {water().log.empty() ? tr("nothing logged yet") : tr("not counted yet"), false};
        }
        return {tr("%1 fish per 10 rod-hours").arg(rateWords(rates_->overall.rate)), false};
    }

private:
    void addQuestion() {
        by_ = new QComboBox(this);
        for (const water::ReviewBy by : water::allReviewBy) {
            const auto name = water::nameOf(by);
            by_->addItem(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
        }
        addField(tr("By"), by_, tr("What to sort the log by"));
        connect(by_, &QComboBox::currentIndexChanged, this, [this] { askAnew(); });
        species_ = new QComboBox(this);
        addField(tr("Species"), species_, tr("Fish that count"));
        connect(species_, &QComboBox::currentIndexChanged, this, [this] { askAnew(); });
        addAmount({tr("At least"), tr("Lightest fish that counts"),
                   [this](const QString& text) {
                       return wording::weightTyped(text, words().units()).has_value();
                   },
                   tr("any weight"), tr("a weight such as 12 lb 8 oz or 5.2 kg")},
                  [this](const QString& text) {
                      question_.leastWeight = wording::weightTyped(text, words().units());
                      askAnew();
                  });
        addDate(tr("From day"), question_.from);
        addDate(tr("To day"), question_.to);
        onChart_ = new QCheckBox(tr("Show the sections' rates on the chart"), this);
        onChart_->setToolTip(tr("Tints each section by its rate"));
        addWide(onChart_);
        connect(onChart_, &QCheckBox::toggled, this, [this] { show(); });
    }

    void addDate(const QString& label, std::optional<units::Day>& day) {
        addAmount(
            {label, tr("A day such as 2026-10-03"),
             [](const QString& text) { return units::dayFrom(text.toStdString()).has_value(); },
             tr("any day"), tr("a day such as 2026-10-03")},
            [this, &day](const QString& text) {
                day = units::dayFrom(text.toStdString());
                askAnew();
            });
    }

    void askAnew() {
        asked_.reset();
        emit lineChanged();
    }

    /// Counts again where the log, the sections or the question changed.
    void ask() {
        const auto sections = context_.open.derived().sections;
        if (asked_ == context_.open.water() && askedSections_ == sections) {
            return;
        }
        asked_ = context_.open.water();
        askedSections_ = sections;
        question_.by = water::allReviewBy[static_cast<std::size_t>(by_->currentIndex())];
        question_.species = species_->currentData().toString().toStdString();
        const bool needsPlaces = question_.by == water::ReviewBy::section ||
                                 question_.by == water::ReviewBy::zone ||
                                 question_.by == water::ReviewBy::band;
        if (asked_->log.empty() || (needsPlaces && !sections)) {
            rates_.reset();
            setWords(words_, asked_->log.empty() ? tr("Nothing logged yet.")
                                                 : tr("Draw the water up to its sections first."));
            return;
        }
        startJob<rates::RateTable>(
            tr("Counting the log"),
            [water = asked_, derived = context_.open.derived(),
             question = question_](base::Progress& progress) {
                return water::reviewLog(*water, derived, question, progress);
            },
            [this](base::Result<rates::RateTable> counted) {
                rates_.reset();
                if (counted) {
                    rates_ = std::make_shared<const rates::RateTable>(std::move(*counted));
                }
                setWords(words_,
                         counted
                             ? tr("Fish per 10 rod-hours with its 95 % interval; steadied: drawn "
                                  "towards the whole water's where little was fished.")
                             : QString::fromStdString(counted.error().sentence()));
                emit lineChanged();
            });
    }

    void show() {
        const bool isShown = rates_ != nullptr;
        bars_->setVisible(isShown);
        table_->setVisible(isShown);
        const bool isBySection = question_.by == water::ReviewBy::section;
        onChart_->setEnabled(isBySection);
        context_.chart.setSectionRates(isBySection && onChart_->isChecked() ? rates_ : nullptr);
        if (!isShown) {
            setWords(notes_, {});
            return;
        }
        double most = 0.0;
        std::vector<widgets::Interval> rows;
        for (const rates::RateRow& row : rates_->rows) {
            const rates::Rate rate = row.rate.value_or(rates::Rate());
            most = std::max(most, std::min(rate.high, 4.0 * rate.per10RodHours));
            rows.push_back({QString::fromStdString(row.name), rate.per10RodHours, rate.low,
                            rate.high, row.rate ? words().rate(rate.per10RodHours) : tr("untried"),
                            row.rate.has_value()});
        }
        bars_->setRows(std::move(rows), most);
        table_->setRows(producedRows(*rates_, words()));
        QStringList notes;
        for (const std::string& note : rates_->notes) {
            notes += QString::fromStdString(note);
        }
        setWords(notes_, notes.join('\n'));
    }

    water::ReviewQuestion question_;
    std::shared_ptr<const water::Water> asked_;
    std::shared_ptr<const sections::SectionMap> askedSections_;
    std::shared_ptr<const rates::RateTable> rates_;
    QStringList shownSpecies_;
    QComboBox* by_ = nullptr;
    QComboBox* species_ = nullptr;
    QCheckBox* onChart_ = nullptr;
    QLabel* words_ = nullptr;
    widgets::IntervalBar* bars_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QLabel* notes_ = nullptr;
};

} // namespace

DayStep* makeProducedStep(DayContext context) {
    return new ProducedStep(context);
}

} // namespace days::looking_back
