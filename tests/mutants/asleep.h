#pragma once

// What run.py puts in front of a source that holds all its mutants at once, asleep. PUMPWRIGHT_MUTANT wakes
// one. `a < b` becomes `a < less(17) > b`, which binds as the comparison did; a limit becomes number(0.5, …).

#include <cstdlib>
#include <type_traits>

#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wdouble-promotion"
#pragma GCC diagnostic ignored "-Wnarrowing"
#pragma GCC diagnostic ignored "-Wparentheses"
#pragma GCC diagnostic ignored "-Wsign-compare"
#pragma GCC diagnostic ignored "-Wsign-conversion"
#pragma GCC diagnostic ignored "-Wunused"
#pragma GCC diagnostic ignored "-Wuseless-cast"

namespace mutants {

inline bool isAwake(int id) {
    static const int awake = [] {
        const char* text = std::getenv("PUMPWRIGHT_MUTANT");
        return text == nullptr ? -1 : std::atoi(text);
    }();
    return id == awake;
}

template <class Number>
Number number(Number usual, int more, Number whenMore, int less, Number whenLess) {
    return isAwake(more) ? whenMore : isAwake(less) ? whenLess : usual;
}

enum class Sign { Less, LessOrEqual, More, MoreOrEqual };

/// A comparison by `sign` that counts equals the other way while it is awake.
template <Sign sign>
struct Comparison {
    int id;
};
constexpr Comparison<Sign::Less> less(int id) {
    return {id};
}
constexpr Comparison<Sign::LessOrEqual> lessOrEqual(int id) {
    return {id};
}
constexpr Comparison<Sign::More> more(int id) {
    return {id};
}
constexpr Comparison<Sign::MoreOrEqual> moreOrEqual(int id) {
    return {id};
}

template <class Left, Sign sign>
struct Begun {
    const Left& left;
    int id;
};

template <class Left, Sign sign>
constexpr Begun<Left, sign> operator<(const Left& left, Comparison<sign> comparison) {
    return {left, comparison.id};
}

template <class Left, Sign sign, class Right>
constexpr bool operator>(Begun<Left, sign> begun, const Right& right) {
    const bool awake = !std::is_constant_evaluated() && isAwake(begun.id);
    if constexpr (sign == Sign::Less || sign == Sign::LessOrEqual) {
        return (sign == Sign::Less) == awake ? begun.left <= right : begun.left < right;
    } else {
        return (sign == Sign::More) == awake ? begun.left >= right : begun.left > right;
    }
}

} // namespace mutants
