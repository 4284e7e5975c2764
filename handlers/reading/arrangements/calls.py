"""The bot called by its name and nothing else, scolded, or praised."""

from collections.abc import Iterator

from handlers.reading.acts import Ask
from handlers.reading.doubts.asides import is_only_thanks
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.words.late import Late

CUES = ("pailkeeper", "bot")
A_CALL, A_COMPLAINT, A_PRAISE = "a call", "a complaint", "a praise"
"""What such a message asks help with."""
_MOST_WORDS = 14
_HELLO = (
    r"(?:(?:hi|hello|hey|hiya|oi|oy|yo|howdy|good morning|morning|evening|there|so|ok|all|"
    r"please) ?)*"
)
_CALL = Late(
    rf"{_HELLO}(?:(?:are )?(?:you|u) (?:still )?(?:there|here|awake|alive|working|up|on|ok|okay|"
    r"listening|asleep)|(?:can|do|did) (?:you|u) (?:hear|read|see) (?:me|us|this|that)|"
    r"(?:any ?body|any ?one) (?:home|there)|is (?:the |this )?(?:still )?(?:working|there|alive|"
    r"awake|on|up|asleep|broken|dead|ok|okay))?(?: (?:today|now|still|at all|or what))*"
)
_COMPLAINT = Late(
    r"(?:(?:oh|ah|no|the|this|that|please|now|just) )*(?:(?:you|u|you're)(?: are| 're|re)? "
    r"(?:(?:so|a|an|really|such|bloody|completely|totally|utterly) )*"
    r"(?:useless|stupid|rubbish|annoying|broken|wrong|hopeless|dumb|daft|idiot|nuisance|pain|"
    r"no (?:good|help|use))|(?:you|u) (?:never|dont|didnt|do not|did not|wont) "
    r"(?:answer|answered|listen|listened|understand|understood|reply|replied|get)(?: (?:me|us|it|"
    r"that|this|my \w+))?|"
    r"why (?:do|did|are) (?:you|u) (?:keep |always |still |not )?(?:telling|saying|asking|sending|"
    r"writing|tell|say|ask|send|write|answer|answering|repeating)(?: \w+){0,4}|"
    r"stop(?: (?:it|that|this|now|talking|please))*|(?:be )?(?:quiet|silent)(?: please)?)"
)
_PRAISE = Late(
    r"(?:(?:oh|wow|ha|honestly|ok|really) )*(?:(?:you|u)(?: are| 're|re| r)?|you're|ur) "
    r"(?:(?:so|a|an|the|really|such|just|simply|pretty|very|absolutely|quite|our) )*"
    r"(?:great|good|brilliant|amazing|awesome|fantastic|wonderful|lovely|super|clever|smart|best|"
    r"star|legend|gem|hero|genius|lifesaver|treasure|marvel|helpful|useful|fab|rock|rule|handy|"
    r"nice|kind|sweet|cool|funny)(?: (?:bot|help|really|you know|mate|today|honestly))*|"
    r"(?:(?:we|i) )?(?:love|like|adore) (?:you|u)(?: (?:all|so|very|much|lots))*|"
    r"(?:good|great|nice|well) (?:bot|job|work|done)"
)


def calls(message: Message) -> Iterator[Found]:
    """A message to the bot that asks for nothing: is it there, was it wrong, was it good."""
    if not message.bot or not message.context.in_room or len(message.norms) > _MOST_WORDS:
        return
    text = " ".join(
        word.norm
        for i, word in enumerate(message.words)
        if i not in message.bot and word.kind != "sign"
    )
    for what, said in ((A_COMPLAINT, _COMPLAINT), (A_CALL, _CALL), (A_PRAISE, _PRAISE)):
        if said.fullmatch(text) and not (what == A_CALL and is_only_thanks(message)):
            yield Found(0, len(message.words), Ask(topic="help", what=what))
            return
