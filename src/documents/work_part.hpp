// The plan of work on paper: what to do in what order, what it may take, what could double it, what
// to buy, what can hurt.
#pragma once

#include "documents/flow.hpp"
#include "quantity/length.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

void write_work(Flow& flow, const weighing::Result& result, const work::Plan& plan,
                quantity::Units units);

// Every rate that the plan rests on.
void write_assumptions(Flow& flow, const work::Plan& plan);

}  // namespace tinworm::documents
