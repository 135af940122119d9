// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/tomorrow/order_view.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/order_day.h"
#include "app/widgets/plain_table.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "core/water/document/known_marks.h"

#include <QLabel>
#include <QPushButton>

namespace days::tomorrow {

namespace {

constexpr int rowsShown = 12;
constexpr int stayColumn = 3;

class OrderStep : public DayStep {
public:
    explicit OrderStep(DayContext context) : DayStep(context) {
        light_ = addWords();
        table_ = new widgets::PlainTable(
            {tr("Mark"), tr("Arrive"), tr("Leave"), tr("Stay"), tr("Move")}, rowsShown, this);
        table_->setAccessibleName(tr("Order of the day"));
        table_->setRowsMovable();
        table_->setEditableColumn(stayColumn);
        addWide(table_);
        connect(table_, &widgets::PlainTable::rowChosen, this, &OrderStep::choose);
        connect(table_, &widgets::PlainTable::rowMoved, this, &OrderStep::move);
        connect(table_, &widgets::PlainTable::typedOver, this, &OrderStep::typeStay);
        layButtons();
        notes_ = addWords();
        cautionsHeading_ = addHeading(tr("Cautions"));
        cautions_ = addWarning();
        rulesHeading_ = addHeading(tr("Rules of this water"));
        rules_ = addWords();
    }

    DayStepLine refresh() override {
        const auto planned = context_.open.planned();
        for (QWidget* widget :
             std::initializer_list<QWidget*>{table_, cautionsHeading_, rulesHeading_}) {
            widget->setVisible(planned != nullptr);
        }
        rows_ = planned ? orderRows(water(), *planned, words()) : std::vector<OrderRow>();
        showRows();
        if (!planned) {
            setWords(light_, tr("The order of the day stands here once marks are found."));
            for (QLabel* label : {notes_, cautions_, rules_}) {
                setWords(label, {});
            }
            return {tr("none yet"), false};
        }
        setWords(light_, lightWords(planned->light, water().clock));
        setWords(
            notes_,
            (wording::windsOfStops(*planned, words()) + wording::notesOf(*planned)).join('\n'));
        setWords(cautions_, wording::cautionsOf(*planned, words()).join('\n'));
        setWords(rules_,
                 (wording::rulesOf(*planned) + wording::fishCareOf(*planned, words())).join('\n'));
        return {dayLine(*planned, words()), !context_.open.isPlanCurrent()};
    }

private:
    void layButtons() {
        const auto lay = [this](const QString& words, const char* key, const QString& help,
                                const std::function<void()>& act) {
            return makeButton(words, QString::fromLatin1(key), help, act);
        };
        earlier_ = lay(tr("Earlier"), "Alt+Up",
                       tr("Go to the chosen mark earlier; rows can be "
                          "dragged as well"),
                       [this] { move(table_->chosen(), table_->chosen() - 1); });
        later_ = lay(tr("Later"), "Alt+Down", tr("Go to the chosen mark later"),
                     [this] { move(table_->chosen(), table_->chosen() + 1); });
        longer_ = lay(tr("Longer"), "Alt+Right",
                      tr("Stay a quarter of an hour longer on the chosen mark; or type the stay"),
                      [this] { step(1); });
        shorter_ = lay(tr("Shorter"), "Alt+Left", tr("Stay a quarter of an hour less"),
                       [this] { step(-1); });
        addRow({earlier_, later_});
        addRow({shorter_, longer_});
        free_ = lay(tr("Order as found"), "",
                    tr("Give the order back to the program; it can be undone"),
                    [this] { edits::freeOrder(context_.open); });
        usual_ = lay(tr("Stay as the day gives"), "",
                     tr("Let the program share out the time on the chosen mark"),
                     [this] { setStay(table_->chosen(), std::nullopt); });
        addRow({free_, usual_});
    }

    void showRows() {
        std::vector<QStringList> cells;
        int chosen = -1;
        const marks::Mark* mark = chosenMark(context_);
        for (const OrderRow& row : rows_) {
            if (mark != nullptr && mark->rank == row.rank) {
                chosen = static_cast<int>(cells.size());
            }
            cells.push_back(row.cells);
        }
        table_->setFaint(!rows_.empty() && !context_.open.isPlanCurrent());
        table_->setRows(std::move(cells));
        table_->chooseQuietly(chosen);
        const bool isAny = chosen >= 0;
        earlier_->setEnabled(chosen > 0);
        later_->setEnabled(isAny && chosen + 1 < static_cast<int>(rows_.size()));
        for (QPushButton* button : {longer_, shorter_}) {
            button->setEnabled(isAny);
        }
        free_->setEnabled(!water().dayByHand.order.empty());
        usual_->setEnabled(isAny && isStayWanted(chosen));
    }

    [[nodiscard]] bool isRow(int row) const {
        return row >= 0 && row < static_cast<int>(rows_.size());
    }
    [[nodiscard]] bool isStayWanted(int row) const {
        const geo::LonLat place = rows_[static_cast<std::size_t>(row)].place;
        return water::stayWantedAt(water().dayByHand, place).has_value();
    }

    void choose(int row) {
        const auto planned = context_.open.planned();
        if (!planned || !isRow(row)) {
            return;
        }
        const int rank = rows_[static_cast<std::size_t>(row)].rank;
        context_.chart.selectMark(rank);
        if (const marks::Mark* mark = chosenMark(context_)) {
            context_.chart.lookAt(mark->place);
        }
    }

    void move(int from, int to) {
        const auto planned = context_.open.planned();
        if (planned && isRow(from) && isRow(to) && from != to) {
            context_.chart.selectMark(rows_[static_cast<std::size_t>(from)].rank);
            edits::orderDay(context_.open, orderMoved(*planned, rows_, from, to));
            refresh(); // The next press of a key begins from here.
        }
    }

    void setStay(int row, std::optional<std::chrono::seconds> length) {
        if (isRow(row)) {
            edits::setStayAt(context_.open, rows_[static_cast<std::size_t>(row)].place, length);
            refresh();
        }
    }

    void step(int quarters) {
        const int row = table_->chosen();
        if (isRow(row)) {
            setStay(row, stayStepped(rows_[static_cast<std::size_t>(row)].stay, quarters));
        }
    }

    void typeStay(int row, const QString& text) {
        const auto stay = stayTyped(text);
        if (!stay) {
            tell(stay.error());
            return;
        }
        setStay(row, *stay);
    }

    std::vector<OrderRow> rows_;
    QLabel* light_ = nullptr;
    widgets::PlainTable* table_ = nullptr;
    QPushButton* earlier_ = nullptr;
    QPushButton* later_ = nullptr;
    QPushButton* longer_ = nullptr;
    QPushButton* shorter_ = nullptr;
    QPushButton* free_ = nullptr;
    QPushButton* usual_ = nullptr;
    QLabel* notes_ = nullptr;
    QLabel* cautionsHeading_ = nullptr;
    QLabel* cautions_ = nullptr;
    QLabel* rulesHeading_ = nullptr;
    QLabel* rules_ = nullptr;
};

} // namespace

DayStep* makeOrderStep(DayContext context) {
    return new OrderStep(context);
}

} // namespace days::tomorrow
