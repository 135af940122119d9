// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/chart/palette.h"
#include "app/days/chart_link.h"
#include "app/days/looking_back/filter_part.h"
#include "app/days/looking_back/give_away.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/produced_view.h"
#include "app/days/looking_back/steps.h"
#include "app/paper/rates_picture.h"
#include "app/widgets/ink_roles.h"
#include "app/widgets/interval_bar.h"
#include "app/widgets/plain_table.h"
#include "app/wording/tongue.h"
#include "core/water/document/chosen_scale.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <iterator>

namespace days::looking_back {

namespace {

constexpr int rowsShown = 12;
constexpr std::size_t barsShown = 8;
constexpr QSize pictureSize{1200, 900};

class ProducedStep : public DayStep {
public:
    ProducedStep(DayContext context, LogQuestion& question)
        : DayStep(context), question_(question) {
        layQuestion();
        words_ = addWords();
        bars_ = new widgets::IntervalBar(widgets::rodsRole, this);
        addWide(bars_);
        table_ = new widgets::PlainTable(
            {tr("Where"), tr("rod-h"), tr("blank"), tr("fish"), tr("steadied")}, rowsShown, this);
        table_->setAccessibleName(tr("What produced"));
        addWide(table_);
        connect(table_, &widgets::PlainTable::rowChosen, this, &ProducedStep::choose);
        layBelow();
        connect(&question_, &LogQuestion::changed, this, &ProducedStep::askAnew);
    }

    DayStepLine refresh() override {
        filter_->refresh();
        ask();
        show();
        if (!rates_) {
            return {water().log.empty() ? tr("nothing logged yet") : tr("not counted yet"), false};
        }
        return {tr("%1 fish per 10 rod-hours").arg(rateWords(rates_->overall.rate)), false};
    }

private:
    void layQuestion() {
        by_ = new QComboBox(this);
        for (const water::ReviewBy by : water::allReviewBy) {
            by_->addItem(titleOf(by));
        }
        addField(tr("By"), by_, tr("What to sort the log by"));
        connect(by_, &QComboBox::currentIndexChanged, this, [this] {
            table_->clearSelection();
            askAnew();
        });
        filter_ = new FilterPart(context_, question_);
        addWide(filter_);
        onChart_ = new QCheckBox(tr("Shade the chart by it"), this);
        onChart_->setToolTip(
            tr("Sections or kinds of place: the darker, the more is to be expected "
               "there; the more broken up, the less sure it is"));
        addWide(onChart_);
        connect(onChart_, &QCheckBox::toggled, this, [this] { show(); });
    }

    void layBelow() {
        untriedWords_ = addWords();
        untried_ = new QCheckBox(tr("List the untried"), this);
        untried_->setToolTip(tr("Shows the rows that were never tried, too"));
        addWide(untried_);
        connect(untried_, &QCheckBox::toggled, this, [this] { show(); });
        with_ = new QComboBox(this);
        addField(tr("Beside it"), with_, tr("Compares the row that is chosen above with another"));
        connect(with_, &QComboBox::currentIndexChanged, this, [this] { compare(); });
        compared_ = addWords();
        notes_ = addWords();
        copy_ = makeButton(tr("Copy picture"), {}, tr("The bars as a picture, to be pasted"),
                           [this] { copyPicture(); });
        save_ = makeButton(tr("Save table…"), {}, tr("All rows as a CSV table"),
                           [this] { saveTable(); });
        addRow({copy_, save_});
    }

    [[nodiscard]] water::ReviewBy by() const {
        return water::allReviewBy[static_cast<std::size_t>(std::max(0, by_->currentIndex()))];
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
        const bool needsPlaces = by() == water::ReviewBy::section ||
                                 by() == water::ReviewBy::zone || by() == water::ReviewBy::band;
        if (asked_->log.empty() || (needsPlaces && !sections)) {
            rates_.reset();
            setWords(words_, asked_->log.empty() ? tr("Nothing logged yet.")
                                                 : tr("Draw the water up to its sections first."));
            return;
        }
        setAwaited(true);
        startJob<rates::RateTable>(
            tr("Counting the log"),
            [water = asked_, derived = context_.open.derived(),
             question = question_.sortedBy(by())](base::Progress& progress) {
                return water::reviewLog(*water, derived, question, progress);
            },
            [this, by = by()](base::Result<rates::RateTable> counted) {
                setAwaited(false);
                rates_.reset();
                if (counted) {
                    rates_ = std::make_shared<const rates::RateTable>(std::move(*counted));
                    countedBy_ = by;
                }
                setWords(words_,
                         counted
                             ? tr("Fish per 10 rod-hours, with the range in which it lies 95 times "
                                  "in 100. Steadied: drawn towards the whole water's where little "
                                  "was fished.")
                             : wording::Tongue::sentence(counted.error()));
                emit lineChanged();
            });
    }

    /// What is shown was counted before the last change: it is pale, and nobody is given it.
    void setAwaited(bool isAwaited) {
        table_->setFaint(isAwaited);
        for (QWidget* each : {static_cast<QWidget*>(bars_), static_cast<QWidget*>(copy_),
                              static_cast<QWidget*>(save_)}) {
            each->setEnabled(!isAwaited);
        }
    }

    void show() {
        const bool isShown = rates_ != nullptr;
        const std::vector<QWidget*> ofRates{bars_, table_, copy_, save_};
        for (QWidget* each : ofRates) {
            each->setVisible(isShown);
        }
        setFieldShown(with_, isShown);
        showOnChart();
        rows_ = isShown ? rowsThatMatter(*rates_, countedBy_, water(),
                                         water::bandsOf(water(), context_.open.derived()), words())
                        : std::vector<ProducedRow>();
        const auto tried =
            static_cast<std::size_t>(std::ranges::count_if(rows_, &ProducedRow::isTried));
        untried_->setVisible(isShown && tried < rows_.size());
        if (!isShown) {
            for (QLabel* label : {notes_, compared_, untriedWords_}) {
                setWords(label, {});
            }
            return;
        }
        setWords(untriedWords_, untriedWords(rows_.size() - tried, *rates_));
        showBars(tried);
        showTable(untried_->isChecked() ? rows_.size() : tried);
        showNotes();
        showOthers();
        compare();
    }

    void showOnChart() {
        const bool isPlace = by() == water::ReviewBy::section || by() == water::ReviewBy::zone;
        onChart_->setEnabled(isPlace);
        const bool isSeen = isPlace && rates_ && countedBy_ == by() && onChart_->isChecked();
        if (!isSeen) {
            onChartNow_.reset();
        } else if (!onChartNow_ || shadedOf_ != rates_) {
            onChartNow_ =
                std::make_shared<const chart::ShownRates>(chart::ShownRates{countedBy_, *rates_});
        }
        shadedOf_ = rates_;
        context_.chart.setRates(onChartNow_);
    }

    void showBars(std::size_t tried) {
        double most = 0.0;
        std::vector<widgets::Interval> bars;
        for (std::size_t i = 0; i < std::min(tried, barsShown); ++i) {
            const rates::Rate rate = rows_[i].counted.shrunk.value_or(rates::Rate());
            most = std::max(most, std::min(rate.high, 4.0 * rate.per10RodHours));
            bars.push_back({rows_[i].name, rate.per10RodHours, rate.low, rate.high,
                            words().rate(rate.per10RodHours), true});
        }
        bars_->setRows(std::move(bars), most);
    }

    void showTable(std::size_t count) {
        std::vector<QStringList> cells;
        for (std::size_t i = 0; i < count; ++i) {
            cells.push_back(producedCells(rows_[i].counted, rows_[i].name));
        }
        cells.push_back(producedCells(rates_->overall, tr("all")));
        table_->setRows(std::move(cells));
    }

    void showNotes() {
        QStringList notes;
        for (const std::string& note : rates_->notes) {
            notes += wording::Tongue::ofCore(note);
        }
        setWords(notes_, notes.join('\n'));
    }

    /// What the chosen row can be laid beside.
    void showOthers() {
        const QSignalBlocker quiet(with_);
        const QString before = with_->currentText();
        with_->clear();
        with_->addItem(tr("nothing"));
        for (const ProducedRow& row : rows_) {
            if (row.isTried()) {
                with_->addItem(row.name);
            }
        }
        with_->setCurrentIndex(std::max(0, with_->findText(before)));
        setFieldShown(with_, chosenRow() != nullptr);
    }

    [[nodiscard]] const ProducedRow* chosenRow() const {
        const int row = table_->chosen();
        return row >= 0 && row + 1 < table_->rowCount() ? &rows_[static_cast<std::size_t>(row)]
                                                        : nullptr;
    }

    void compare() {
        const ProducedRow* chosen = chosenRow();
        const auto other = std::ranges::find(rows_, with_->currentText(), &ProducedRow::name);
        const bool areTwo = chosen != nullptr && chosen->isTried() && with_->currentIndex() > 0 &&
                            other != rows_.end() && other->name != chosen->name;
        setWords(compared_, areTwo ? comparedWords(*chosen, *other) : QString());
    }

    void choose(int) {
        const ProducedRow* chosen = chosenRow();
        showOthers();
        compare();
        const auto& sections = context_.open.derived().sections;
        if (countedBy_ != water::ReviewBy::section || chosen == nullptr || !sections) {
            return;
        }
        const auto section =
            std::ranges::find(sections->sections, chosen->counted.name, &sections::Section::name);
        if (section != sections->sections.end()) {
            context_.chart.selectSection(static_cast<int>(section - sections->sections.begin()));
            context_.chart.lookAt(section->middle);
        }
    }

    /// The table as it is shown: sorted, called as the user calls it, tried ones only.
    [[nodiscard]] rates::RateTable shownTable() const {
        std::vector<ProducedRow> tried;
        std::ranges::copy_if(rows_, std::back_inserter(tried), &ProducedRow::isTried);
        return calledByTheUser(tried, *rates_);
    }

    void copyPicture() {
        copyToClipboard(paper::renderRates(
            shownTable(),
            tr("%1, fish by %2").arg(QString::fromStdString(water().name), titleOf(countedBy_)),
            pictureSize));
        emit context_.open.happened(tr("The picture can be pasted now."));
    }

    void saveTable() {
        saveTableOf(*this, context_.open, QStringLiteral("rates.csv"),
                    producedTable(rows_, words()));
    }

    LogQuestion& question_;
    std::shared_ptr<const water::Water> asked_;
    std::shared_ptr<const sections::SectionMap> askedSections_;
    std::shared_ptr<const rates::RateTable> rates_;
    water::ReviewBy countedBy_ = water::ReviewBy::section;
    std::vector<ProducedRow> rows_;
    std::shared_ptr<const chart::ShownRates> onChartNow_;
    std::shared_ptr<const rates::RateTable> shadedOf_;
    QComboBox* by_ = nullptr;
    FilterPart* filter_ = nullptr;
    QCheckBox* onChart_ = nullptr;
    QCheckBox* untried_ = nullptr;
    QComboBox* with_ = nullptr;
    QLabel* words_ = nullptr;
    QLabel* compared_ = nullptr;
    QLabel* untriedWords_ = nullptr;
    QLabel* notes_ = nullptr;
    widgets::IntervalBar* bars_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QPushButton* copy_ = nullptr;
    QPushButton* save_ = nullptr;
};

} // namespace

DayStep* makeProducedStep(DayContext context, LogQuestion& question) {
    return new ProducedStep(context, question);
}

} // namespace days::looking_back
