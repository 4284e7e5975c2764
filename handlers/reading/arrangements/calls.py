"""The bot called by its name and nothing else, asked whether it has heard, scolded, or praised."""

from collections.abc import Iterator

from handlers.reading.acts import Ask
from handlers.reading.doubts.asides import is_only_thanks
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.words.late import Late

CUES = ("pailkeeper", "bot")
A_CALL, A_COMPLAINT, A_PRAISE = "a call", "a complaint", "a praise"
A_RECEIPT = "a receipt"
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
_IT = r"(?:that|it|this|mine|my (?:last )?(?:one|message|record|layer|lot)|all (?:of )?that)"
_RECEIPT = Late(
    rf"{_HELLO}(?:(?:did|have|do) (?:you|u) (?:get|got|have|catch|caught|hear|note|noted|record|"
    rf"recorded|log|logged|write|written|save|saved|put) {_IT}|"
    rf"(?:you|u) (?:got|have|noted|get|caught|recorded|logged) {_IT}|"
    rf"(?:was|is) {_IT} (?:noted|recorded|written|logged|saved|counted|in)|"
    rf"did {_IT} (?:go through|go in|get through|count|work|register))"
    r"(?: (?:down|in|in the book|ok|all right|alright|right|or not|now|please|last one|lot))*"
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
    """A message to the bot that asks little: is it there, has it heard, was it wrong or good."""
    if not message.bot or not message.context.in_room or len(message.norms) > _MOST_WORDS:
        return
    text = " ".join(
        word.norm
        for i, word in enumerate(message.words)
        if i not in message.bot and word.kind != "sign"
    )
    asked = (A_COMPLAINT, _COMPLAINT), (A_RECEIPT, _RECEIPT), (A_CALL, _CALL), (A_PRAISE, _PRAISE)
    for what, said in asked:
        if said.fullmatch(text) and not (what == A_CALL and is_only_thanks(message)):
            yield Found(0, len(message.words), Ask(topic="help", what=what))
            return
