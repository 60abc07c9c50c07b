/*
Package scoop says how wrong a cup or a scoop is, from repeated weighings of
level fills.

	cup, err := scoop.Calibrate(weighings, units.Gram) // on a scale that shows 1 g
	next, err := cup.NextScoop(95)
	fmt.Print(cup.Explain())

[Calibrate] makes a [Calibration]: how many weighings, their mean, their spread.
From it come the interval that holds the cup's true mean, the interval of the
next scoop and of a day's scoops, Grubbs' test for an odd weighing, how many
weighings are enough, and the relative standard uncertainty that a budget of the
bowl takes. [Compare] holds two cups, two foods or two people against each other,
[Calibration.Against] a cup against its label, and [ComparePeople] splits the
spread of several people into that within a person and that between people.

# What it is not

It doesn't make a cup a measuring instrument. A calibration holds for this cup,
this food, this person and this way of filling; another bag of the same food may
already pack differently. What a calibration is for is to show how far off a cup
is, and that weighing is better.

# How to weigh

Fill the cup level as it is filled every day, empty it on the scale, put the food
back and mix it, and do that ten times or more; filling afresh is the point, since
weighing one fill ten times shows the scale and not the cup. Three weighings are
the least that is computed with. Their standard deviation is itself uncertain by
52 %, that of ten by 24 % (JCGM 100:2008, Table E.1): [Calibration.SDUncertainty].

Nothing is dropped. A weighing that [Calibration.Outlier] finds odd stays in every
figure until the caller leaves it out, and says so.

# Intervals

A level is a percentage, 95 for 95 %, from 50 % to 99.999 %. An interval at 95 %
is right 95 times in 100 if the fills scatter like a normal distribution and don't
depend on each other; a cup that packs tighter as the bag empties breaks that.
The mean of many scoops suffers less from a skewed scatter than the next scoop.

With n weighings of mean m and standard deviation s, quantile t of Student's
distribution with n - 1 degrees of freedom:

	true mean        m ± t s √(1/n)
	next scoop       m ± t s √(1 + 1/n)
	sum of k scoops  k (m ± t s √(1/k + 1/n))

A scale that shows steps of d adds d²/12 to the square of the uncertainty (JCGM
100:2008, F.2.2.1), the same in every weighing, so that more weighings don't take it away;
t then has the effective degrees of freedom of Welch and Satterthwaite (G.4.1).
Where the steps are finer than the scatter of the cup this widens the intervals a
little more than needed, for the scatter already holds some of the rounding. A
readability of zero leaves it out. An interval doesn't go below 0 g. That the scale
itself is right is taken for granted: check it with a known mass.

Every quantile comes from gonum.org/v1/gonum/stat/distuv, which loses digits as the degrees of
freedom grow: at a hundred some twelve are right, at a million eight. From 10^8 on the
normal distribution stands for Student's.

# Errors

Bad input is a [*units.FieldError]; several faults at once are a [units.ErrorList].
The result is then zero. A Calibration is a plain struct. Where only the figures of a cup are
known it is written as Calibration{N: 12, Mean: 98 * units.Gram, SD: 4 * units.Gram},
and each method checks it. No input makes this package panic.

# Sources

  - JCGM 100:2008, Evaluation of measurement data - Guide to the expression of
    uncertainty in measurement (GUM): 4.2, F.2.2.1, G.4.1, H.5, Tables E.1 and G.2.
  - NIST/SEMATECH e-Handbook of Statistical Methods: 1.3.5.2 (confidence limits of a
    mean), 1.3.5.17.1 (Grubbs' test), 7.2.2 (a mean against a target) and, from memory,
    1.3.5.3 (two means with unequal variances).
  - NIST Dataplot Reference Manual: prediction limits, Grubbs' test.
  - German and others, J Anim Physiol Anim Nutr 95 (2011) 752-757, as quoted in Clinician's
    Brief: cups of dry food, 2 to 13 % within a person, 2 to 28 % between people.
*/
package scoop
